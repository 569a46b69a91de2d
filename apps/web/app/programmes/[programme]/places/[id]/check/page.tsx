import { BatchInList, Place } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { z } from 'zod';
import { JobForm } from '../../../../../../features/bench/job-form.tsx';
import { writeJob } from '../../../../../../features/bench/write-job.action.ts';
import { atSite, sitesOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { Caution } from '../../../../../../ui/caution.tsx';
import { Empty } from '../../../../../../ui/empty.tsx';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { type Step, Trail } from '../../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ bench }) => bench.sends.check);

interface CheckPageProps {
  readonly params: Promise<{ programme: string; id: string }>;
  readonly searchParams: Promise<{ done?: string }>;
}

/** A whole plot, one line a batch. */
export default async function CheckPage({ params, searchParams }: CheckPageProps) {
  const [{ programme, id }, { done }] = await Promise.all([params, searchParams]);
  const [{ name, steps }, batches, workplace, { bench: said }, t] = await Promise.all([
    whereOf(programme, id), read(`${apiOf(programme, 'batches')}?placeId=${id}&stage=planted&state=alive&limit=200`, z.array(BatchInList)), workplaceOf(programme), getMessages(), getTranslations('bench'),
  ]);
  return (
    <>
      <Trail steps={steps} />
      <PageHeading lead={said.leads.check}>{t('titles.check', { place: name })}</PageHeading>
      {done && <p role="status" className="mb-6 font-semibold">{t('done', { n: Number(done) || 0 })}</p>}
      {batches.length === 0 ? (
        <Empty>{said.nonePlanted}</Empty>
      ) : (
        <>
          <div className="mb-6"><Caution>{said.caution.check}</Caution></div>
          <JobForm job="check" action={writeJob.bind(null, programme, 'check', batches.length, pageOf(programme, 'places', id, 'check'))} batches={batches} choices={{ places: [], labels: [] }} workplace={workplace} />
        </>
      )}
    </>
  );
}

/** What the place is called, and the way back from it: for a partner by way of their sites. */
async function whereOf(programme: string, id: string): Promise<{ readonly name: string; readonly steps: readonly Step[] }> {
  const [{ role }, { places, sites: said }] = await Promise.all([workplaceOf(programme), getMessages()]);
  if (role === 'partner') {
    const { name, site } = atSite(await sitesOf(programme), id) ?? notFound();
    return { name, steps: [{ href: pageOf(programme, 'sites'), words: said.title }, { href: pageOf(programme, 'sites', site.id), words: site.name }] };
  }
  const { name } = await read(apiOf(programme, 'places', id), Place);
  return { name, steps: [{ href: pageOf(programme, 'places'), words: places.title }, { href: pageOf(programme, 'places', id), words: name }] };
}
