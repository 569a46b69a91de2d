import type { Saying as Said } from '@sprigline/contract';
import { effectiveEntries } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { ENTRY_COLUMNS, type EntryRow, entryOfRow } from './pages/page-rows.ts';

/** What an entry says now. */
export interface Standing {
  readonly id: string;
  readonly observedOn: string;
  readonly said: Said;
}

/** @param chosen a query answering `id` */
const withCorrections = (chosen: string): string => `
  WITH RECURSIVE meant AS MATERIALIZED (${chosen})
  SELECT json_agg(x) AS entries FROM (
    SELECT ${ENTRY_COLUMNS} FROM meant JOIN entry e ON e.programme_id = $1 AND e.id = meant.id
    UNION ALL
    SELECT ${ENTRY_COLUMNS} FROM meant JOIN entry e ON e.programme_id = $1 AND e.corrects_id = meant.id
    WHERE NOT EXISTS (SELECT FROM waiting_entry w WHERE w.programme_id = $1 AND w.entry_id = e.id)) x`;

/** Entries as they stand after their corrections, by id; those withdrawn are not among them. */
export async function standingOf(sql: UnitOfWork, programmeId: string, ids: readonly string[]): Promise<ReadonlyMap<string, Standing>> {
  if (ids.length === 0) return new Map();
  const standing = await standingEntries(sql, programmeId, 'SELECT unnest($2::uuid[]) AS id', [[...new Set(ids)]]);
  return new Map(standing.map((entry) => [entry.id, entry]));
}

/**
 * The same for entries that a query finds, in content order.
 *
 * @param chosen answers `id` of entries that are no corrections; the programme is `$1`
 * @param values further parameters of it, from `$2` on
 */
export async function standingEntries(sql: UnitOfWork, programmeId: string, chosen: string, values: readonly unknown[] = []): Promise<readonly Standing[]> {
  const { entries } = await sql.one<{ entries: EntryRow[] | null }>(withCorrections(chosen), [programmeId, ...values]);
  const { effective } = effectiveEntries((entries ?? []).map(entryOfRow));
  // The domain looks at less than was said; what was said is all there still.
  return effective.map(({ id, observedOn, saying }) => ({ id, observedOn, said: saying as Said }));
}
