import { DonorsAtRisk } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages, getTranslations } from 'next-intl/server';
import { AsOf } from '../../../../../features/reading/as-of.tsx';
import { HoldingsList } from '../../../../../features/reading/holdings-list.tsx';
import { WorkedOut } from '../../../../../features/reading/worked-out.tsx';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { apiOf } from '../../../../../lib/workplace.ts';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations('readings'))('atRisk.title') };
}

export default async function DonorsAtRiskPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [answer, { readings: said }, t] = await Promise.all([
    read(apiOf(programme, 'readings', 'donors-at-risk'), DonorsAtRisk), getMessages(), getTranslations('readings.atRisk'),
  ]);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'readings'), words: said.title }]} />
      <PageHeading lead={said.atRisk.lead}>{said.atRisk.title}</PageHeading>
      <AsOf {...answer} />
      <p className="mb-4 max-w-prose">{t('few', { n: answer.fewRooted })} <strong>{t('notTold', { n: answer.notTold })}</strong></p>
      {answer.donors.length === 0 ? <p>{said.atRisk.empty}</p> : <HoldingsList programme={programme} donors={answer.donors} />}
      <div className="mt-3 text-sm"><WorkedOut what="risk" /></div>
      <p className="not-on-paper mt-2">
        <a href={apiOf(programme, 'readings', 'donors-at-risk.csv')} className="inline-flex min-h-8 items-center underline">{said.csv}</a>
      </p>
    </>
  );
}
