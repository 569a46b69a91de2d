import { expect, test } from 'vitest';
import { entriesOf, type Line } from '../../test/ledger/books-of.ts';
import * as say from '../../test/ledger/sayings.ts';
import { refuseUnlessSound } from '../survival/stage-tally.ts';
import type { Saying, Stage } from './entry.ts';
import { replay } from './replay.ts';
import { sumTally } from './sum-tally.ts';

interface At {
  readonly id: string;
  readonly stage: Stage;
  readonly openingEntryId: string;
}

const tallyOf = (lines: readonly Line[], batches: readonly At[]) => {
  const entries = entriesOf(lines);
  return sumTally(
    batches.map((batch) => ({ stage: batch.stage, books: replay({ ...batch, openingPlaceId: 'bench' }, entries) })),
    { donorId: 'donor', standId: 'stand' },
  );
};

const TRAY: At = { id: 'tray', stage: 'cutting', openingEntryId: 'e1' };
const of = (saying: Saying, batchId: string): Saying => ({ ...saying, batchId }) as Saying;

test('what came of a sticking is told stage by stage, splits and moves left out', () => {
  const tallies = tallyOf(
    [
      ['2025-01-10', say.stuck(40)],
      ['2025-02-01', say.splitOff(10)],
      ['2025-03-01', say.counted(25, { dead: [say.dead(2, 'mould')] })],
      ['2025-03-02', say.counted(26)],
      ['2025-03-03', of(say.died(4, 'mould'), 'half')],
      ['2025-10-01', say.lifted(15)],
      ['2025-10-02', say.called(3)],
      ['2025-10-02', say.restuck(2)],
      ['2025-10-03', say.thrownOut(1)],
      ['2025-10-20', of(say.givenOut(2), 'next')],
    ],
    [
      TRAY,
      { id: 'half', stage: 'cutting', openingEntryId: 'e2' },
      { id: 'next', stage: 'liner', openingEntryId: 'e6' },
    ],
  );

  expect(tallies).toMatchObject([
    {
      donorId: 'donor',
      standId: 'stand',
      stage: 'cutting',
      cameIn: 40,
      goneOn: 15,
      died: { mould: 6 },
      unaccounted: 2,
      notRooted: 3,
      thrownOut: 1,
      restuck: 2,
      here: 11,
    },
    { stage: 'liner', cameIn: 15, goneOn: 0, died: {}, givenOut: 2, here: 13 },
  ]);
  tallies.forEach(refuseUnlessSound);
});

test('a plant that skips a stage came into it and went on from it, though no batch stood there', () => {
  const tallies = tallyOf(
    [
      ['2025-01-10', say.stuck(40)],
      ['2025-10-01', say.planted(12, { toBatchId: 'hill' })],
    ],
    [TRAY, { id: 'hill', stage: 'planted', openingEntryId: 'e2' }],
  );

  expect(tallies.map(({ stage, cameIn, goneOn, here }) => [stage, cameIn, goneOn, here])).toEqual([
    ['cutting', 40, 12, 28],
    ['liner', 12, 12, 0],
    ['potted', 12, 12, 0],
    ['planted', 12, 0, 12],
  ]);
  tallies.forEach(refuseUnlessSound);
});

test('plants given to a partner stay with their sticking', () => {
  const [tally] = tallyOf(
    [
      ['2025-01-10', say.stuck(40)],
      ['2025-02-01', say.givenOut(15, { toBatchId: 'theirs' })],
      ['2025-03-01', of(say.counted(14), 'theirs')],
    ],
    [TRAY, { id: 'theirs', stage: 'cutting', openingEntryId: 'e2' }],
  );
  expect(tally).toMatchObject({ cameIn: 40, givenOut: 0, unaccounted: 1, here: 39 });
});

test('mixed plants leave their row for the row of the mix, and come back when identified', () => {
  const lines: Line[] = [
    ['2025-01-10', say.stuck(40)],
    ['2025-02-01', say.mixed('mix', ['tray', 10], ['other', 5])],
    ['2025-03-01', say.identified(4, 'mix', 'known')],
  ];
  const [own] = tallyOf(lines, [TRAY, { id: 'known', stage: 'cutting', openingEntryId: 'e3' }]);
  const [mix] = tallyOf(lines, [{ id: 'mix', stage: 'cutting', openingEntryId: 'e2' }]);

  expect(own).toMatchObject({ cameIn: 40, mixed: 10, mixedIn: 4, here: 34 });
  expect(mix).toMatchObject({ cameIn: 0, mixed: 4, mixedIn: 15, here: 11 });
  [own!, mix!].forEach(refuseUnlessSound);
});

test('trees that the last check missed are counted among those here', () => {
  const [tally] = tallyOf(
    [
      ['2025-01-10', say.received(10, { stage: 'planted' })],
      ['2025-09-01', say.checked(8, { notFound: 2 })],
    ],
    [{ ...TRAY, stage: 'planted' }],
  );
  expect(tally).toMatchObject({ cameIn: 10, here: 10, notFound: 2 });
});

test('no batches, no tallies', () => {
  expect(sumTally([])).toEqual([]);
});
