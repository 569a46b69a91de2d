import type { BatchInList } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';
import { BatchFlags } from './batch-flags.tsx';
import { labelOf } from './line-nodes.ts';

/** @param isOpen whether the batches' own pages may be opened */
export function BatchTable({ programme, batches, isOpen }: { programme: string; batches: readonly BatchInList[]; isOpen: boolean }) {
  const { batches: said } = useMessages();
  const t = useTranslations('batches');
  return (
    <Table
      caption={said.caption}
      isCaptionHidden
      rows={batches}
      keyOf={({ id }) => id}
      columns={[
        { head: said.columns.label, cell: (batch) => <Tag {...(isOpen ? { href: pageOf(programme, 'batches', batch.id) } : {})}>{labelOf(batch)}</Tag> },
        { head: said.columns.plants, isNumber: true, cell: ({ balance }) => balance },
        { head: said.columns.stage, cell: (batch) => <BatchFlags batch={batch} /> },
        { head: said.columns.rooted, isNumber: true, cell: ({ stage, rootedNow }) => stage === 'cutting' && (rootedNow ?? '–') },
        { head: said.columns.donor, cell: ({ donorTree }) => donorTree && <Tag {...(isOpen ? { href: pageOf(programme, 'donor-trees', donorTree.id) } : {})}>{donorTree.label}</Tag> },
        { head: said.columns.place, cell: ({ place, rows }) => place && [place.name, rows && t('rows', { rows })].filter(Boolean).join(', ') },
        { head: said.columns.seen, cell: ({ lastSeenOn }) => lastSeenOn && <span className="whitespace-nowrap">{sayDay(lastSeenOn)}</span> },
      ]}
    />
  );
}
