import { useMessages } from 'next-intl';
import { Species } from '../../ui/species.tsx';
import { Table } from '../../ui/table.tsx';
import type { TrayCard } from './cards.ts';

/** What will stand on the cards, before they are printed. */
export function CardTable({ caption, cards }: { caption: string; cards: readonly TrayCard[] }) {
  const { columns } = useMessages().trayCards;
  return (
    <Table
      caption={caption}
      isCaptionHidden
      rows={cards}
      keyOf={({ key }) => key}
      columns={[
        { head: columns.label, cell: ({ label }) => label },
        { head: columns.tree, cell: ({ donorTree, species }) => <>{donorTree} <span className="block text-sm text-ink-soft"><Species name={species} /></span></> },
        { head: columns.cuttings, isNumber: true, cell: ({ cuttings }) => cuttings },
        { head: columns.place, cell: ({ place }) => place },
        { head: columns.rows, cell: ({ rows }) => rows },
        { head: columns.recipe, cell: ({ recipe }) => recipe },
      ]}
    />
  );
}
