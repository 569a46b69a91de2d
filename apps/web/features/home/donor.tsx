import type { DonorHolding } from '@sprigline/contract';
import { pageOf } from '../../lib/page-address.ts';
import { Tag } from '../../ui/tag.tsx';

/** A donor by its label; a clone of several trees by that of one of them. */
export function Donor({ programme, donor }: { programme: string; donor: DonorHolding }) {
  return <Tag href={pageOf(programme, 'donor-trees', donor.treeId)}>{donor.label}</Tag>;
}
