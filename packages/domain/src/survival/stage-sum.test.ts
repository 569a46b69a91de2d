import { describe, expect, test } from 'vitest';
import { addTally, endsOf, NOTHING } from './stage-sum.ts';
import type { StageTally } from './stage-tally.ts';

const LIFTED: StageTally = {
  donorId: 'a',
  stage: 'cutting',
  cameIn: 10,
  goneOn: { liner: 3, planted: 2 },
  died: { rot: 4 },
  unaccounted: 0,
  notRooted: 0,
  thrownOut: 0,
  givenOut: 0,
  restuck: 0,
  here: 1,
};

describe('addTally', () => {
  test('counts a skipped stage as reached and gone on from, and no other', () => {
    expect(addTally(NOTHING, LIFTED, 'cutting')).toMatchObject({ reached: 10, goneOn: 5, died: { rot: 4 }, here: 1 });
    expect(addTally(NOTHING, LIFTED, 'liner')).toMatchObject({ reached: 2, goneOn: 2, died: {}, here: 0 });
    expect(addTally(NOTHING, LIFTED, 'potted')).toMatchObject({ reached: 2, goneOn: 2 });
    expect(addTally(NOTHING, LIFTED, 'planted')).toEqual(NOTHING);
  });

  test('adds the dead cause by cause', () => {
    const twice = addTally(addTally(NOTHING, LIFTED, 'cutting'), { ...LIFTED, died: { rot: 1, frost: 3 } }, 'cutting');

    expect(twice.died).toEqual({ rot: 5, frost: 3 });
  });

  test('says nothing of a stage before its own', () => {
    expect(addTally(NOTHING, { ...LIFTED, stage: 'potted', goneOn: { planted: 5 } }, 'liner')).toEqual(NOTHING);
  });
});

describe('endsOf', () => {
  test('takes a living tree at a site for the good end, and one not found for an open question', () => {
    const planted = { ...NOTHING, reached: 10, died: { drought: 3, browsed: 1 }, here: 6, notFound: 2 };

    expect(endsOf(planted, 'planted')).toMatchObject({ goneOn: 4, died: 4, stillHere: 2 });
    expect(endsOf(planted, 'potted')).toMatchObject({ goneOn: 0, died: 4, stillHere: 6 });
  });
});
