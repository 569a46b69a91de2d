import { useMessages } from 'next-intl';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';
import type { PickLine } from './pick-lines.ts';

/** The pick list as it is walked, with boxes for pencil marks. */
export function PickTable({ lines }: { lines: readonly PickLine[] }) {
  const said = useMessages().requests;
  const box = 'inline-block h-7 border-2 border-ink align-middle';
  return (
    <Table
      caption={said.pick}
      isCaptionHidden
      rows={lines}
      keyOf={({ batchId }) => batchId}
      columns={[
        { head: said.columns.label, cell: ({ label }) => <Tag>{label ?? said.untold}</Tag> },
        { head: said.columns.n, isNumber: true, cell: ({ n }) => <span className="text-lg font-semibold">{n}</span> },
        { head: said.columns.place, cell: ({ path }) => path.join(' › ') },
        { head: said.columns.donorTree, cell: ({ donorTree }) => donorTree?.label ?? said.unknownTree },
        { head: said.columns.container, cell: ({ container }) => container },
        { head: said.columns.taken, cell: () => <span className="flex gap-2" aria-hidden><span className={`${box} w-7`} /><span className={`${box} w-14`} /></span> },
      ]}
      foot={<tr><th scope="row" className="px-4 py-3">{said.total}</th><td className="px-4 py-3 text-right">{lines.reduce((sum, { n }) => sum + n, 0)}</td><td colSpan={4} /></tr>}
    />
  );
}
