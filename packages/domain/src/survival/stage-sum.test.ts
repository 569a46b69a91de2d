import { describe, expect, test } from 'vitest';
import { addTally, endsOf, NOTHING } from './stage-sum.ts';
import type { StageTally } from './stage-tally.ts';

const TALLY: StageTally = {
  donorId: 'a',
  stage: 'cutting',
  cameIn: 12,
  goneOn: 5,
  died: { rot: 4 },
  unaccounted: 0,
  notRooted: 0,
  thrownOut: 0,
  givenOut: 0,
  restuck: 0,
  mixed: 2,
  here: 1,
};

describe('addTally', () => {
  test('adds the dead cause by cause', () => {
    const twice = addTally(addTally(NOTHING, TALLY), { ...TALLY, died: { rot: 1, frost: 3 } });

    expect(twice).toMatchObject({ reached: 24, goneOn: 10, died: { rot: 5, frost: 3 }, mixedAway: 4, here: 2 });
  });

  test('counts a plant once that left its sticking for a mixed batch', () => {
    const mixed = { ...NOTHING_CAME, mixedIn: 2, here: 2 };

    expect(addTally(addTally(NOTHING, TALLY), mixed)).toMatchObject({ reached: 12, mixedAway: 0, here: 3 });
  });
});

const NOTHING_CAME: StageTally = { ...TALLY, donorId: undefined, cameIn: 0, goneOn: 0, died: {}, mixed: 0 };

describe('endsOf', () => {
  test('takes a living tree at a site for the good end, and one not found for an open question', () => {
    const planted = { ...NOTHING, reached: 10, died: { drought: 3, browsed: 1 }, here: 6, notFound: 2 };

    expect(endsOf(planted, 'planted')).toMatchObject({ goneOn: 4, died: 4, stillHere: 2 });
    expect(endsOf(planted, 'potted')).toMatchObject({ goneOn: 0, died: 4, stillHere: 6 });
  });
});
