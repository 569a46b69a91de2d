import type { DespatchNote } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';

/** Every plant that went, with its family. */
export function NoteTable({ programme, note }: { programme: string; note: DespatchNote }) {
  const said = useMessages().requests;
  const hasLabelsThere = note.lines.some(({ toBatch }) => toBatch !== null);
  return (
    <Table
      isStacked
      caption={said.noteTitle}
      isCaptionHidden
      rows={note.lines}
      keyOf={({ entryId }) => entryId}
      columns={[
        { head: said.columns.label, cell: ({ batchId, label }) => <Tag href={pageOf(programme, 'batches', batchId)}>{label ?? said.untold}</Tag> },
        { head: said.columns.n, isNumber: true, cell: ({ n }) => (n === 0 ? said.takenBack : n) },
        { head: said.columns.donorTree, cell: ({ donorTree }) => donorTree?.label ?? said.unknownTree },
        { head: said.columns.stand, cell: ({ stand }) => stand?.name },
        { head: said.columns.stuckOn, cell: ({ stuckOn }) => stuckOn && sayDay(stuckOn) },
        { head: said.columns.container, cell: ({ container }) => container },
        ...(hasLabelsThere ? [{ head: said.columns.toBatch, cell: ({ toBatch }: DespatchNote['lines'][number]) => toBatch?.label }] : []),
      ]}
    />
  );
}
