import { Batch, Saying } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { ACT_OF_KIND } from '../../../../../../../../features/batch/acts.ts';
import { labelOf } from '../../../../../../../../features/batch/line-nodes.ts';
import { MendForm } from '../../../../../../../../features/batch/mend-form.tsx';
import { WhatItIs } from '../../../../../../../../features/batch/what-it-is.tsx';
import { pageOf } from '../../../../../../../../lib/page-address.ts';
import { read } from '../../../../../../../../lib/read.ts';
import { apiOf, workplaceOf } from '../../../../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../../../../ui/button-link.tsx';
import { PageHeading } from '../../../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../../../ui/trail.tsx';

interface MendPageProps {
  readonly params: Promise<{ programme: string; id: string; entryId: string }>;
}

/** Mend what was written wrong; what never happened is withdrawn instead. */
export default async function MendPage({ params }: MendPageProps) {
  const { programme, id, entryId } = await params;
  const [batch, workplace, { batches: said }, t] = await Promise.all([
    read(apiOf(programme, 'batches', id), Batch), workplaceOf(programme), getMessages(), getTranslations('batches'),
  ]);
  const item = batch.history.find((one) => one.id === entryId);
  if (!item?.now) notFound();

  const act = ACT_OF_KIND[item.kind];
  const was = Saying.safeParse(item.now.said).data;
  const target = { programme, batchId: id, entryId, sawVersion: item.latestVersionId };
  const label = labelOf(batch);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'batches'), words: said.title }, { href: pageOf(programme, 'batches', id), words: label }]} />
      <PageHeading lead={act ? said.mendLead : said.onlyWithdraw}>{t('mendTitle', { label })}</PageHeading>
      <div className="mb-10"><WhatItIs batch={batch} /></div>
      {act && <MendForm target={target} act={act} was={was} day={item.now.observedOn} minute={item.now.minute} isCutting={batch.stage === 'cutting'} workplace={workplace} />}
      <ButtonLink look="grave" href={pageOf(programme, 'batches', id, 'entries', entryId, 'withdraw')}>{said.withdraw}</ButtonLink>
    </>
  );
}
