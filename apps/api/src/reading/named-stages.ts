import type { FunnelStage } from '@sprigline/contract';
import type { DonorSpread, FunnelStage as Worked } from '@sprigline/domain';
import type { NamedDonor, NamedDonors } from './head.queries.ts';

/** Donors that a spread names: the best and the worst. */
export const namedDonors = (spread: DonorSpread | undefined): string[] =>
  spread?.kind === 'best-and-worst' ? [spread.best.donorId, spread.worst.donorId] : [];

export const nameOf = <R extends { readonly donorId: string }>(of: R, donors: NamedDonors): R & NamedDonor =>
  ({ ...of, ...(donors.get(of.donorId) ?? { donorId: of.donorId, treeId: of.donorId, label: '' }) });

export function withNames({ byDonor, ...stage }: Worked, donors: NamedDonors): FunnelStage {
  const named = { ...stage, died: { ...stage.died } };
  if (!byDonor) return named;
  if (byDonor.kind === 'interval') return { ...named, byDonor };
  return { ...named, byDonor: { ...byDonor, best: nameOf(byDonor.best, donors), worst: nameOf(byDonor.worst, donors) } };
}
