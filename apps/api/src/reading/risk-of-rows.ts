import { donorsAtRisk } from '@sprigline/domain';
import type { HoldingRow } from './holding.queries.ts';

/** The programme's own lines would stand in its settings; until they do, these are used and printed. */
export const LIMITS = { fewRooted: 5, fallenBy: 0.5 };

/** Of those whose rooted plants somebody told: unknown is not none. */
export function atRisk(rows: readonly HoldingRow[]) {
  const told = rows.flatMap(({ rootedNow, ...row }) => (rootedNow === null ? [] : [{ ...row, rootedNow, rootedEarlier: [row.rootedEver] }]));
  const byId = new Map(told.map((row) => [row.donorId, row]));
  return donorsAtRisk(told, LIMITS).flatMap(({ donorId, risks }) => {
    const row = byId.get(donorId);
    return row ? [{ ...row, risks }] : [];
  });
}
