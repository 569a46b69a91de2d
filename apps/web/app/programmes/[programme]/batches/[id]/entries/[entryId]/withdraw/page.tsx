import { Batch } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { labelOf } from '../../../../../../../../features/batch/line-nodes.ts';
import { WhatItIs } from '../../../../../../../../features/batch/what-it-is.tsx';
import { WithdrawForm } from '../../../../../../../../features/batch/withdraw-form.tsx';
import { pageOf } from '../../../../../../../../lib/page-address.ts';
import { read } from '../../../../../../../../lib/read.ts';
import { apiOf, workplaceOf } from '../../../../../../../../lib/workplace.ts';
import { PageHeading } from '../../../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../../../ui/trail.tsx';

interface WithdrawPageProps {
  readonly params: Promise<{ programme: string; id: string; entryId: string }>;
}

export default async function WithdrawPage({ params }: WithdrawPageProps) {
  const { programme, id, entryId } = await params;
  const [batch, workplace, { batches: said }, t] = await Promise.all([
    read(apiOf(programme, 'batches', id), Batch), workplaceOf(programme), getMessages(), getTranslations('batches'),
  ]);
  const item = batch.history.find((one) => one.id === entryId);
  if (!item?.now) notFound();

  const label = labelOf(batch);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'batches'), words: said.title }, { href: pageOf(programme, 'batches', id), words: label }]} />
      <PageHeading lead={said.withdrawLead}>{t('withdrawTitle', { label })}</PageHeading>
      <div className="grid gap-6">
        <WhatItIs batch={batch} />
        <WithdrawForm target={{ programme, batchId: id, entryId, sawVersion: item.latestVersionId }} workplace={workplace} />
      </div>
    </>
  );
}
