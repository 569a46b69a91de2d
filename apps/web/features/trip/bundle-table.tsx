import type { DonorTree, Trip } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';

interface BundleTableProps {
  readonly programme: string;
  readonly bundles: Trip['bundles'];
  readonly trees: readonly DonorTree[];
}

/** What was taken, tree by tree. */
export function BundleTable({ programme, bundles, trees }: BundleTableProps) {
  const said = useMessages().trips;
  const t = useTranslations('trips');
  const label = (id: string) => trees.find((tree) => tree.id === id)?.label ?? `…${id.slice(-6)}`;
  return (
    <Table
      caption={said.bundles}
      isCaptionHidden
      rows={bundles}
      keyOf={({ id }) => id}
      columns={[
        { head: said.fields.donorTreeId, cell: ({ donorTreeId }) => <Tag href={pageOf(programme, 'donor-trees', donorTreeId)}>{label(donorTreeId)}</Tag> },
        { head: said.fields.cuttings, isNumber: true, cell: ({ cuttings }) => cuttings },
        { head: said.fields.shoot, cell: ({ shoot }) => shoot && said.shoot[shoot] },
        { head: said.fields.foliage, cell: ({ foliage }) => foliage && said.foliage[foliage] },
        { head: said.fields.base, cell: ({ base }) => base && said.base[base] },
        { head: said.heightShort, isNumber: true, cell: ({ heightM }) => heightM !== null && t('metres', { n: heightM }) },
        { head: said.lengthShort, isNumber: true, cell: ({ lengthCm }) => lengthCm !== null && t('centimetres', { n: lengthCm }) },
      ]}
    />
  );
}
