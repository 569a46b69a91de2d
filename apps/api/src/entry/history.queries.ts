import type { MovementShown } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { ENTRY_COLUMNS, type EntryRow, entryOfRow } from './pages/page-rows.ts';
import type { StoredEntry } from './stored-entry.ts';

export interface HistoryRows {
  /** Entries that name the batch in any version, with all their corrections. */
  readonly entries: readonly StoredEntry[];
  /** Those of them without effect until something else arrives. */
  readonly waiting: ReadonlySet<string>;
  /** Names of those who saw or wrote them. */
  readonly names: ReadonlyMap<string, string>;
  readonly movements: readonly MovementShown[];
  readonly flags: readonly FlagRow[];
  /** The moment, by the database's clock. */
  readonly at: string;
}
export interface FlagRow {
  readonly entryId: string;
  readonly code: string;
  readonly n: number | null;
  readonly decision: string | null;
}

const HISTORY = `
WITH line AS (
  SELECT entry_id AS id FROM entry_touch WHERE programme_id = $1 AND batch_id = $2
  UNION SELECT c.id FROM entry_touch t, LATERAL (SELECT id FROM entry WHERE programme_id = $1 AND corrects_id = t.entry_id OFFSET 0) c WHERE t.programme_id = $1 AND t.batch_id = $2
), shown AS MATERIALIZED (
  SELECT e.* FROM line, LATERAL (SELECT ${ENTRY_COLUMNS} FROM entry e WHERE e.programme_id = $1 AND e.id = line.id OFFSET 0) e
)
SELECT present_time()::text AS at,
  (SELECT coalesce(json_agg(x), '[]') FROM shown x) AS entries,
  ARRAY(SELECT w.entry_id FROM waiting_entry w WHERE w.programme_id = $1 AND w.entry_id IN (SELECT id FROM line)) AS waiting,
  (SELECT coalesce(json_agg(x), '[]') FROM (
    SELECT p.id, p.name FROM person p WHERE p.programme_id = $1 AND p.id IN (SELECT seen_by FROM shown UNION SELECT written_by FROM shown)) x) AS names,
  (SELECT json_strip_nulls(coalesce(json_agg(x), '[]')) FROM (
    SELECT m.entry_id AS "entryId", m.day, m.effect, m.n, m.cause, m.to_stage AS "toStage", m.undoes_id AS undoes, m.last_seen AS "lastSeen"
    FROM movement m WHERE m.programme_id = $1 AND m.batch_id = $2 ORDER BY m.seq) x) AS movements,
  (SELECT coalesce(json_agg(x), '[]') FROM (
    SELECT f.entry_id AS "entryId", f.code, f.n, (
      SELECT r.decision FROM review r WHERE r.programme_id = $1 AND r.entry_id = f.entry_id AND r.batch_id = f.batch_id AND r.code = f.code
      ORDER BY r.at DESC, r.id DESC LIMIT 1) AS decision
    FROM flag f WHERE f.programme_id = $1 AND f.batch_id = $2) x) AS flags`;

/** Everything ever said of a batch, and what it booked there. */
export async function historyOf(sql: UnitOfWork, programmeId: string, batchId: string): Promise<HistoryRows> {
  const row = await sql.one<{ at: string; entries: EntryRow[]; waiting: string[]; names: { id: string; name: string }[]; movements: MovementShown[]; flags: FlagRow[] }>(
    HISTORY, [programmeId, batchId],
  );
  return { ...row, entries: row.entries.map(entryOfRow), waiting: new Set(row.waiting), names: new Map(row.names.map(({ id, name }) => [id, name])) };
}

export { latestVersionOf } from './latest-version.ts';
export { ENTRY_COLUMNS, type EntryRow, entryOfRow } from './pages/page-rows.ts';
export { rootIdOf, type StoredEntry } from './stored-entry.ts';
export { mayMend } from './judge/refuse-correction.ts';
