import type { Saying as Said } from '@sprigline/contract';
import { effectiveEntries } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { ENTRY_COLUMNS, type EntryRow, entryOfRow } from './pages/page-rows.ts';

/** What an entry says now. */
export interface Standing {
  readonly observedOn: string;
  readonly said: Said;
}

const WITH_CORRECTIONS = `
  SELECT json_agg(x) AS entries FROM (
    SELECT ${ENTRY_COLUMNS} FROM entry e WHERE e.programme_id = $1 AND e.id = ANY ($2)
    UNION ALL
    SELECT ${ENTRY_COLUMNS} FROM entry e WHERE e.programme_id = $1 AND e.corrects_id = ANY ($2)
      AND NOT EXISTS (SELECT FROM waiting_entry w WHERE w.programme_id = $1 AND w.entry_id = e.id)) x`;

/** Entries as they stand after their corrections, by id; those withdrawn are not among them. */
export async function standingOf(sql: UnitOfWork, programmeId: string, ids: readonly string[]): Promise<ReadonlyMap<string, Standing>> {
  if (ids.length === 0) return new Map();
  const { entries } = await sql.one<{ entries: EntryRow[] | null }>(WITH_CORRECTIONS, [programmeId, [...new Set(ids)]]);
  const { effective } = effectiveEntries((entries ?? []).map(entryOfRow));
  // The domain looks at less than was said; what was said is all there still.
  return new Map(effective.map(({ id, observedOn, saying }) => [id, { observedOn, said: saying as Said }]));
}
