import type { BatchInList } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { RowLink } from '../../ui/row-link.tsx';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';
import { BatchFlags } from './batch-flags.tsx';
import { labelOf } from './line-nodes.ts';
import { partnersAct } from './partners-act.ts';

/** @param isForPartner with the one thing that a partner may write of each, where there is one */
export function BatchTable({ programme, batches, isForPartner }: { programme: string; batches: readonly BatchInList[]; isForPartner: boolean }) {
  const { batches: said } = useMessages();
  const t = useTranslations('batches');
  const toWrite = (batch: BatchInList) => {
    const act = partnersAct(batch);
    return act && <RowLink href={pageOf(programme, 'batches', batch.id, act)}>{said.acts[act]} <span className="sr-only">{labelOf(batch)}</span></RowLink>;
  };
  const rooted = ({ stage, rootedNow }: BatchInList) => stage === 'cutting' && (rootedNow ?? '–');
  return (
    <Table
      isStacked
      caption={said.caption}
      isCaptionHidden
      rows={batches}
      keyOf={({ id }) => id}
      columns={[
        { head: said.columns.label, cell: (batch) => <Tag href={pageOf(programme, 'batches', batch.id)}>{labelOf(batch)}</Tag> },
        { head: said.columns.plants, isNumber: true, cell: ({ balance }) => balance },
        ...(isForPartner && batches.some(partnersAct) ? [{ head: said.columns.toWrite, cell: toWrite }] : []),
        { head: said.columns.stage, cell: (batch) => <BatchFlags batch={batch} /> },
        ...(isForPartner && batches.every(({ stage }) => stage !== 'cutting') ? [] : [{ head: said.columns.rooted, isNumber: true, cell: rooted }]),
        { head: said.columns.donor, cell: ({ donorTree }) => (donorTree === null ? isForPartner && <span className="text-ink-soft italic">{said.ofOurs.notTold}</span> : <Tag href={pageOf(programme, 'donor-trees', donorTree.id)}>{donorTree.label}</Tag>) },
        { head: said.columns.place, cell: ({ place, rows }) => place && [place.name, rows && t('rows', { rows })].filter(Boolean).join(', ') },
        { head: said.columns.seen, cell: ({ lastSeenOn }) => lastSeenOn && <span className="whitespace-nowrap">{sayDay(lastSeenOn)}</span> },
      ]}
    />
  );
}
