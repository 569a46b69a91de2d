import type { NewsEntry } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { sayDay, sayMoment } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { useSaidWords } from '../../ui/ledger/said-words.tsx';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';

interface NewsTableProps {
  readonly programme: string;
  readonly zone: string;
  readonly entries: readonly NewsEntry[];
  readonly nameOf: (id: string) => string | undefined;
}

/** Entries in the order in which they arrived, the newest first. */
export function NewsTable({ programme, zone, entries, nameOf }: NewsTableProps) {
  const { news: said, entries: words } = useMessages();
  const say = useSaidWords(nameOf);
  const kinds: Readonly<Record<string, string>> = words.kinds;
  return (
    <Table
      isStacked
      caption={said.kind}
      isCaptionHidden
      rows={entries}
      keyOf={({ id }) => id}
      columns={[
        { head: said.what, cell: ({ kind }) => kinds[kind] ?? kind },
        { head: said.about, cell: ({ batch, placeName }) => (batch ? <Tag href={pageOf(programme, 'batches', batch.id)}>{batch.label ?? `…${batch.id.slice(-6)}`}</Tag> : placeName) },
        { head: said.says, cell: (entry) => <span className="block min-w-48">{say(entry.said)}{entry.note && <i> “{entry.note}”</i>}</span> },
        { head: said.seenOn, cell: ({ observedOn }) => sayDay(observedOn) },
        { head: said.by, cell: ({ writtenBy, seenBy }) => seenBy ?? writtenBy },
        { head: said.arrived, cell: ({ receivedAt }) => <span className="whitespace-nowrap">{sayMoment(receivedAt, zone)}</span> },
      ]}
    />
  );
}
