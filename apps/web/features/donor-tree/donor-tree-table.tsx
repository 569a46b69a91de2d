import type { DonorTree, Stand, Taxon } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { nameIn, taxonName } from '../../lib/lists.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';
import { TreeState } from './tree-state.tsx';

interface DonorTreeTableProps {
  readonly programme: string;
  readonly trees: readonly DonorTree[];
  readonly taxa: readonly Taxon[];
  /** Left out where all trees are of one stand. */
  readonly stands?: readonly Stand[];
  readonly caption: string;
}

export function DonorTreeTable({ programme, trees, taxa, stands, caption }: DonorTreeTableProps) {
  const said = useMessages().donorTrees;
  return (
    <Table
      isStacked
      caption={caption}
      isCaptionHidden
      rows={trees}
      keyOf={({ id }) => id}
      columns={[
        { head: said.fields.label, cell: ({ id, label }) => <Tag href={pageOf(programme, 'donor-trees', id)}>{label}</Tag> },
        ...(stands ? [{ head: said.fields.standId, cell: ({ standId }: DonorTree) => nameIn(stands, standId) }] : []),
        { head: said.fields.taxonId, cell: ({ taxonId }) => taxonName(taxa, taxonId) },
        { head: said.fields.sex, cell: ({ sex }) => said.sex[sex] },
        { head: said.fields.ageClass, cell: ({ ageClass }) => ageClass && said.ageClass[ageClass] },
        { head: said.fields.state, cell: ({ state }) => <TreeState state={state} /> },
      ]}
    />
  );
}
