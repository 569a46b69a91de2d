import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { refuseUnlessSound } from '../survival/stage-tally.ts';
import type { BatchIdentity, Effect } from './books.ts';
import type { Entry, Saying, Stage } from './entry.ts';
import { replay } from './replay.ts';
import { sumTally } from './sum-tally.ts';

// The group's own log sheet of two seasons, read row by row in the plainest way: the reading that people
// import through has tests of its own. Here only the books matter.
const SHEET = new URL('../../../../test/fixtures/ok/log-sheet-two-seasons.csv', import.meta.url);

interface Row {
  readonly date: string;
  readonly what: string;
  readonly label: string;
  readonly count: number;
  readonly rooted: number | undefined;
  readonly toLabel: string;
  readonly place: string;
  readonly cause: string;
}

const cellsOf = (line: string): string[] =>
  [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)].map(([, cell]) => cell ?? '');

const rows: Row[] = readFileSync(SHEET, 'utf8')
  .trim()
  .split(/\r?\n/)
  .slice(1)
  .map((line) => {
    const [date = '', what = '', label = '', , , , count, told, toLabel = '', place = '', , cause = ''] = cellsOf(line);
    const rooted = told ? Number(told) : undefined;
    return { date, what, label, count: Number(count), rooted, toLabel, place, cause };
  });

const STAGE_AFTER = new Map<string, Stage>([
  ['stuck', 'cutting'],
  ['lifted', 'liner'],
  ['potted', 'potted'],
  ['planted', 'planted'],
]);

function sayingOf(row: Row): Saying {
  const { label: batchId, count: n, toLabel: toBatchId, place: placeId, cause, rooted } = row;
  switch (row.what) {
    case 'stuck':
      return { kind: 'stuck', batchId, stickingId: batchId, n, placeId };
    case 'counted':
      // Roots cannot be told from above, so whoever told of them had tugged.
      return { kind: 'counted', batchId, alive: n, rooted, dead: [], look: rooted === undefined ? 'look' : 'tug' };
    case 'died':
      return { kind: 'died', batchId, n, cause, certainty: 'unknown' };
    case 'thrown out':
      return cause === 'no roots' ? { kind: 'called', batchId, n } : { kind: 'thrownOut', batchId, n, reason: cause };
    case 'lifted':
    case 'potted':
    case 'planted':
      return { kind: row.what, batchId, n, toBatchId, placeId };
    case 'given':
      return { kind: 'givenOut', batchId, n };
    default:
      throw new Error(`the sheet says "${row.what}"`);
  }
}

const idOf = (index: number): string => `row ${String(index + 2).padStart(4, '0')}`;

const entries: Entry[] = rows.map((row, index) => ({
  id: idOf(index),
  observedOn: row.date,
  receivedOn: '2026-07-01',
  door: 'import',
  saying: sayingOf(row),
}));

const batches: BatchIdentity[] = rows.flatMap(({ what, label, toLabel, place }, index) => {
  const stage = STAGE_AFTER.get(what);
  const id = what === 'stuck' ? label : toLabel;
  return stage ? [{ id, stage, openingEntryId: idOf(index), openingPlaceId: place }] : [];
});

const staged = batches.map((batch) => ({ id: batch.id, stage: batch.stage, books: replay(batch, entries) }));
const movements = staged.flatMap(({ books }) => books.movements);
const flags = staged.flatMap(({ id, books }) => books.flags.map(({ code, n }) => ({ id, code, n })));
const plants = (effect: Effect): number =>
  movements.reduce((total, one) => (one.effect === effect ? total + one.n : total), 0);
const onHand = staged.reduce((total, { books }) => total + books.balance, 0);

describe('the log sheet of two seasons', () => {
  test('comes to these plants', () => {
    expect({
      rows: rows.length,
      batches: batches.length,
      stuck: plants('stuck'),
      onHand,
      died: plants('died'),
      unaccounted: plants('unaccounted') - plants('takenBack'),
      notRooted: plants('notRooted'),
      thrownOut: plants('thrownOut'),
      givenOut: plants('givenOut'),
      found: plants('found'),
    }).toEqual({
      rows: 1268,
      batches: 212,
      stuck: 1692,
      onHand: 607,
      died: 219,
      unaccounted: 682,
      notRooted: 137,
      thrownOut: 0,
      givenOut: 51,
      found: 4,
    });
  });

  test('closes stage by stage', () => {
    const tallies = sumTally(staged);
    tallies.forEach(refuseUnlessSound);
    expect(tallies.map(({ stage, cameIn, goneOn, here }) => ({ stage, cameIn, goneOn, here }))).toEqual([
      { stage: 'cutting', cameIn: 1693, goneOn: 755, here: 1 },
      { stage: 'liner', cameIn: 758, goneOn: 544, here: 106 },
      { stage: 'potted', cameIn: 544, goneOn: 315, here: 199 },
      { stage: 'planted', cameIn: 315, goneOn: 0, here: 301 },
    ]);
  });

  test('finds the four plants too many where the sheet has them', () => {
    expect(flags.filter(({ code }) => code === 'found-by-count' || code === 'took-more')).toEqual([
      { id: 'T008', code: 'found-by-count', n: 1 },
      { id: 'T154', code: 'took-more', n: 1 },
      { id: 'T112', code: 'took-more', n: 1 },
      { id: 'T096', code: 'took-more', n: 1 },
    ]);
  });

  test('does not depend on the order of its rows, though they were entered late', () => {
    const backwards = batches.map((batch) => replay(batch, entries.toReversed()));
    expect(backwards).toEqual(staged.map(({ books }) => books));
  });
});
