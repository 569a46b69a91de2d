import { touchedBatches } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { ENTRY_COLUMNS, type EntryRow, entryOfRow, rootIdOf } from '../entry/projected.queries.ts';
import type { Finding } from './finding.ts';

const AT_ONCE = 5_000;

/** Entries that name a batch and are not found from it, or name a batch that is not there and do not wait for it. */
export async function unfiledEntries(sql: UnitOfWork, programmeId: string): Promise<Finding[]> {
  const findings: Finding[] = [];
  for (let after: string | null = null; ; ) {
    const rows = await portion(sql, programmeId, after);
    const last = rows.at(-1);
    if (!last) return findings;
    for (const row of rows) findings.push(...unfiled(programmeId, row));
    after = last.id;
  }
}

interface FiledRow extends EntryRow, Record<string, unknown> {
  readonly touched: string[];
  readonly waits: boolean;
}

/** Touches are those of the entry itself or of the one that it corrects. */
const portion = (sql: UnitOfWork, programmeId: string, after: string | null): Promise<FiledRow[]> =>
  sql.rows<FiledRow>(
    `SELECT ${ENTRY_COLUMNS},
       ARRAY(SELECT t.batch_id::text FROM entry_touch t WHERE t.programme_id = $1 AND t.entry_id = coalesce(e.corrects_id, e.id)) AS touched,
       EXISTS (SELECT FROM waiting_entry w WHERE w.programme_id = $1 AND w.entry_id IN (e.id, e.corrects_id))
         OR EXISTS (SELECT FROM entry c WHERE c.programme_id = $1 AND c.corrects_id = e.id) AS waits
     FROM entry e WHERE e.programme_id = $1 AND ($2::uuid IS NULL OR e.id > $2) ORDER BY e.id LIMIT ${AT_ONCE}`,
    [programmeId, after],
  );

function unfiled(programmeId: string, row: FiledRow): Finding[] {
  if (row.waits) return [];
  const entry = entryOfRow(row);
  return touchedBatches(entry.saying)
    .filter((batchId) => !row.touched.includes(batchId))
    .map((batchId) => ({
      rule: 'entry-is-not-filed',
      programmeId,
      sentence: `The entry ${rootIdOf(entry)} speaks of the batch ${batchId} and is not filed there.`,
    }));
}
