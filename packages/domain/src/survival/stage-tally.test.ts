import { describe, expect, test } from 'vitest';
import { isLater, refuseUnlessSound, type StageTally } from './stage-tally.ts';

const SOUND: StageTally = {
  donorId: 'a',
  stage: 'cutting',
  cameIn: 20,
  goneOn: { liner: 6, potted: 1 },
  died: { rot: 2, 'dried out': 1 },
  unaccounted: 1,
  notRooted: 3,
  thrownOut: 1,
  givenOut: 1,
  restuck: 2,
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
    ['survival/stage-gone-back', { goneOn: { cutting: 7 } }],
    ['survival/stage-gone-back', { stage: 'potted', goneOn: { liner: 7 } }],
    ['survival/not-a-count', { unaccounted: -1, notRooted: 5 }],
    ['survival/not-a-count', { died: { rot: Number.NaN } }],
    ['survival/not-a-count', { goneOn: { liner: 6.5, potted: 0.5 } }],
    ['survival/not-a-count', { notFound: 3 }],
    ['survival/not-a-count', { notFound: -1 }],
  ] satisfies Array<[string, Partial<StageTally>]>)('answers %s for %o', (code, fault) => {
    expect(() => refuseUnlessSound({ ...SOUND, ...fault } as StageTally)).toThrow(
      expect.objectContaining({ name: 'DomainError', code }),
    );
  });
});

test('stages come in one order', () => {
  expect(isLater('liner', 'cutting')).toBe(true);
  expect(isLater('planted', 'potted')).toBe(true);
  expect(isLater('potted', 'potted')).toBe(false);
  expect(isLater('cutting', 'planted')).toBe(false);
});
