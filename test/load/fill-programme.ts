import type pg from 'pg';
import { withoutIndexes } from './without-indexes.ts';
import { fillBooks } from './fill-books.ts';
import { fillEntries } from './fill-entries.ts';
import { fillSources } from './fill-sources.ts';

/** How large a programme is. A sticking is of twenty cuttings. */
export interface Size {
  readonly stands: number;
  readonly donors: number;
  readonly stickings: number;
  /** Counts that somebody wrote, a sticking; other acts write seven entries or so. */
  readonly looks: number;
}

const TABLES = ['entry', 'entry_touch', 'sticking', 'sticking_candidate', 'tally', 'batch', 'batch_state', 'movement', 'stay', 'label', 'mixed_part', 'bundle', 'donor_tree', 'tray_filling', 'place'];

/**
 * Fills a programme by set-based SQL, sources, entries and books alike, in one transaction: it is
 * whole or empty. Of an entry only what readings look at is written out, and no replay made the books;
 * they close all the same, as the constraints of the tables ask.
 *
 * @param sql signed in as superuser: foreign keys, triggers and policies are passed over, since a million
 * plants would wait for them
 */
export async function fillProgramme(sql: pg.Client, programmeId: string, size: Size): Promise<void> {
  await sql.query('BEGIN');
  await sql.query('SET LOCAL session_replication_role = replica');
  await withoutIndexes(sql, TABLES, async () => {
    await fillSources(sql, programmeId, size);
    await fillBooks(sql, programmeId, size);
    await fillEntries(sql, programmeId, size);
  });
  await sql.query('COMMIT');
  await sql.query('VACUUM ANALYZE');
}
