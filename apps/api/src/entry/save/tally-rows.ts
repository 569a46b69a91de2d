import { type Books, STAGES, sumTally } from '@sprigline/domain';
import type { ChangedBooks } from '../books/book-keeper.ts';
import { TALLY_COUNTS } from './columns.ts';

export interface TallyRow extends Record<string, unknown> {
  readonly sticking_id: string;
  readonly stage: string;
  readonly died_of: Readonly<Record<string, number>>;
}

/**
 * By how much the tallies of stickings change. Every number of a tally is a sum over
 * batches, so what one batch adds now is what it was worth after, less what it was
 * worth before; other batches of the sticking need not be read, nor waited for.
 *
 * Sorted, so that two writers of one sticking take its rows in the same order.
 */
export function tallyChanges(changed: readonly ChangedBooks[]): TallyRow[] {
  const sums = new Map<string, TallyRow>();
  for (const { batch, before, after } of changed) {
    if (batch.stickingId === undefined) continue;
    for (const row of worth(batch.stickingId, batch.stage, after)) add(sums, row, 1);
    if (before) for (const row of worth(batch.stickingId, batch.stage, before)) add(sums, row, -1);
  }
  return [...sums]
    .filter(([, row]) => !isNothing(row))
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, row]) => row);
}

/** What one batch is worth in the tallies of its sticking, at its own stage and those that its plants skipped. */
function worth(stickingId: string, stage: ChangedBooks['batch']['stage'], books: Books): TallyRow[] {
  return sumTally([{ stage, books }]).map((tally) => ({
    sticking_id: stickingId,
    stage: tally.stage,
    came_in: tally.cameIn,
    gone_on: tally.goneOn,
    died: total(Object.values(tally.died)),
    unaccounted: tally.unaccounted,
    not_rooted: tally.notRooted,
    thrown_out: tally.thrownOut,
    given_out: tally.givenOut,
    restuck: tally.restuck,
    mixed: tally.mixed ?? 0,
    mixed_in: tally.mixedIn ?? 0,
    here: tally.here,
    not_found: tally.notFound ?? 0,
    died_of: tally.died,
  }));
}

function add(sums: Map<string, TallyRow>, row: TallyRow, sign: 1 | -1): void {
  const key = `${row.sticking_id} ${STAGES.indexOf(row.stage as (typeof STAGES)[number])}`;
  const sum = sums.get(key);
  const counts = Object.fromEntries(TALLY_COUNTS.map((name) => [name, number(sum?.[name]) + sign * number(row[name])]));
  const causes = new Set([...Object.keys(sum?.died_of ?? {}), ...Object.keys(row.died_of)]);
  const diedOf = [...causes].map((cause) => [cause, number(sum?.died_of[cause]) + sign * number(row.died_of[cause])]);
  sums.set(key, { sticking_id: row.sticking_id, stage: row.stage, ...counts, died_of: Object.fromEntries(diedOf.filter(([, n]) => n !== 0)) });
}

const isNothing = (row: TallyRow): boolean => TALLY_COUNTS.every((name) => row[name] === 0) && Object.keys(row.died_of).length === 0;
const number = (value: unknown): number => (typeof value === 'number' ? value : 0);
const total = (numbers: readonly number[]): number => numbers.reduce((sum, n) => sum + n, 0);
