import type { BatchInList } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { RowLink } from '../../ui/row-link.tsx';
import { Species } from '../../ui/species.tsx';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';
import { BatchFlags } from './batch-flags.tsx';
import { labelOf } from './line-nodes.ts';
import { partnersAct } from './partners-act.ts';

interface BatchTableProps {
  readonly programme: string;
  readonly batches: readonly BatchInList[];
  /** What each place lies in, such as "Glasshouse › Bench 1 › Tray 4"; a partner knows only its name, and on the page of a place it is told already. */
  readonly paths?: ReadonlyMap<string, string>;
  readonly isForPartner: boolean;
}

/** @param isForPartner with the one thing that a partner may write of each, where there is one */
export function BatchTable({ programme, batches, paths, isForPartner }: BatchTableProps) {
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
        { head: said.columns.donor, cell: (batch) => <Donor programme={programme} batch={batch} isForPartner={isForPartner} /> },
        { head: said.columns.place, cell: ({ place, rows }) => place && [paths?.get(place.id) ?? place.name, rows && t('rows', { rows })].filter(Boolean).join(', ') },
        { head: said.columns.seen, cell: ({ lastSeenOn }) => lastSeenOn && <span className="whitespace-nowrap">{sayDay(lastSeenOn)}</span> },
      ]}
    />
  );
}

/** The donor tree, or what is known where it is not: of which stand and species all of them are. */
function Donor({ programme, batch: { donorTree, stand, taxon, isMixed }, isForPartner }: { programme: string; batch: BatchInList; isForPartner: boolean }) {
  const { batches: said } = useMessages();
  if (donorTree !== null) return <Tag href={pageOf(programme, 'donor-trees', donorTree.id)}>{donorTree.label}</Tag>;
  return (
    <span className="text-ink-soft">
      {isForPartner && !isMixed && <span className="italic">{said.ofOurs.notTold} </span>}
      {stand?.name} {taxon && <Species name={taxon.name} />}
    </span>
  );
}
