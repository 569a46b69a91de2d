import { describe, expect, test } from 'vitest';
import { refuseUnlessSound, type StageTally } from './stage-tally.ts';

const SOUND: StageTally = {
  donorId: 'a',
  stage: 'cutting',
  cameIn: 19,
  mixedIn: 4,
  goneOn: 7,
  died: { rot: 2, 'dried out': 1 },
  unaccounted: 1,
  notRooted: 3,
  thrownOut: 1,
  givenOut: 1,
  restuck: 2,
  mixed: 3,
  here: 2,
};

describe('refuseUnlessSound', () => {
  test('lets a tally pass whose plants add up', () => {
    expect(() => refuseUnlessSound(SOUND)).not.toThrow();
  });

  test.each([
    ['survival/books-do-not-close', { cameIn: 21 }],
    ['survival/books-do-not-close', { here: 3 }],
    ['survival/books-do-not-close', { died: {} }],
    ['survival/books-do-not-close', { mixedIn: 0 }],
    ['survival/books-do-not-close', { mixed: undefined }],
    ['survival/nothing-after-planted', { stage: 'planted' }],
    ['survival/not-a-count', { unaccounted: -1, notRooted: 5 }],
    ['survival/not-a-count', { died: { rot: Number.NaN } }],
    ['survival/not-a-count', { goneOn: 6.5, here: 2.5 }],
    ['survival/not-a-count', { notFound: 3 }],
    ['survival/not-a-count', { notFound: -1 }],
  ] satisfies Array<[string, Partial<StageTally>]>)('answers %s for %o', (code, fault) => {
    expect(() => refuseUnlessSound({ ...SOUND, ...fault } as StageTally)).toThrow(
      expect.objectContaining({ name: 'DomainError', code }),
    );
  });
});
