import type { UnitOfWork } from '../database/unit-of-work.ts';
import { BookKeeper } from './books/book-keeper.ts';
import { OpenPages } from './pages/open-pages.ts';
import { openPages } from './pages/open-pages.queries.ts';
import type { KnownBatch } from './pages/page-rows.ts';
import { partnerRows } from './save/partner-rows.ts';
import { type ProjectionRows, projectionRows, type Row } from './save/projection-rows.ts';
import { project } from './save/save.ts';
import { Statement } from './save/statement.ts';
import { type TallyRow, tallyChanges } from './save/tally-rows.ts';

/** So many batches are replayed at once: their entries have to fit into memory. */
const AT_ONCE = 1_000;

/** What the projections of some batches must be, by a full replay. */
export interface Projected {
  readonly rows: readonly (ProjectionRows & { readonly batch: KnownBatch; readonly partners: readonly Row[] })[];
  /** What these batches are worth in the tallies of their stickings. */
  readonly tallies: readonly TallyRow[];
  /** Writes all of it, where nothing of it is. */
  readonly write: (sql: UnitOfWork) => Promise<void>;
}

/** Replays all batches of a programme, portion by portion. */
export async function* projectedOf(sql: UnitOfWork, programmeId: string): AsyncGenerator<Projected> {
  for (let after = ''; ; ) {
    const ids = await batchIds(sql, programmeId, after);
    const last = ids.at(-1);
    if (last === undefined) return;
    yield await replayed(sql, programmeId, ids);
    after = last;
  }
}

async function replayed(sql: UnitOfWork, programmeId: string, ids: readonly string[]): Promise<Projected> {
  const named = { ledger: new Set(ids), records: new Set<string>(), labels: new Set<string>() };
  const pages = new OpenPages(await openPages(sql, { programmeId, zone: 'UTC' }, named));
  const keeper = new BookKeeper(pages);
  const changed = [...pages.batches.values()].map((batch) => ({ batch, before: undefined, after: keeper.now(batch.id) }));
  return {
    rows: changed.map(({ batch, after }) => ({ batch, ...projectionRows(batch, after), partners: partnerRows(batch, after, pages) })),
    tallies: tallyChanges(changed),
    write: async (using) => {
      const statement = new Statement(programmeId);
      project(statement, changed, pages);
      await statement.run(using);
    },
  };
}

async function batchIds(sql: UnitOfWork, programmeId: string, after: string): Promise<string[]> {
  const rows = await sql.rows<{ id: string }>(
    'SELECT id FROM batch WHERE programme_id = $1 AND ($2::uuid IS NULL OR id > $2) ORDER BY id LIMIT $3',
    [programmeId, after || null, AT_ONCE],
  );
  return rows.map(({ id }) => id);
}

export { lockAll } from './pages/locks.queries.ts';
export { rootIdOf } from './stored-entry.ts';
export { type EntryRow, ENTRY_COLUMNS, entryOfRow, type KnownBatch } from './pages/page-rows.ts';
export { FLAG, FLAG_KEY, IN_SEQUENCE, MOVEMENT, PARTNER_KEY, STATE, STAY, TALLY_COUNTS } from './save/columns.ts';
export type { Row } from './save/projection-rows.ts';
export type { TallyRow } from './save/tally-rows.ts';
