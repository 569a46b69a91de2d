import { BatchInList, Place } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { JobForm } from '../../../../../../features/bench/job-form.tsx';
import { writeJob } from '../../../../../../features/bench/write-job.action.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { Empty } from '../../../../../../ui/empty.tsx';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ bench }) => bench.sends.check);

interface CheckPageProps {
  readonly params: Promise<{ programme: string; id: string }>;
  readonly searchParams: Promise<{ done?: string }>;
}

/** A whole plot, one line a batch. */
export default async function CheckPage({ params, searchParams }: CheckPageProps) {
  const [{ programme, id }, { done }] = await Promise.all([params, searchParams]);
  const [place, batches, workplace, { bench: said, places }, t] = await Promise.all([
    read(apiOf(programme, 'places', id), Place), read(`${apiOf(programme, 'batches')}?placeId=${id}&stage=planted&state=alive&limit=200`, z.array(BatchInList)), workplaceOf(programme), getMessages(), getTranslations('bench'),
  ]);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'places'), words: places.title }, { href: pageOf(programme, 'places', id), words: place.name }]} />
      <PageHeading lead={said.leads.check}>{t('titles.check', { place: place.name })}</PageHeading>
      {done && <p role="status" className="mb-6 font-semibold">{t('done', { n: Number(done) || 0 })}</p>}
      {batches.length === 0 ? (
        <Empty>{said.none}</Empty>
      ) : (
        <JobForm job="check" action={writeJob.bind(null, programme, 'check', batches.length, pageOf(programme, 'places', id, 'check'))} batches={batches} choices={{ places: [], labels: [] }} workplace={workplace} />
      )}
    </>
  );
}
