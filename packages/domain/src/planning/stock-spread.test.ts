import { describe, expect, test } from 'vitest';
import { type DatedStay, type Lot, stickingOf, stockSpread } from './stock-spread.ts';

const PRIOR = { mean: 0.5, likeness: 0.2, plants: 20 };
const stay = (unit: string, plants: number, to: DatedStay['to'], more: Partial<DatedStay> = {}): DatedStay => ({ state: 'cutting', from: 0, until: 140, stuckOn: 0, unit, plants, ...(to && { to }), ...more });
const lot = (plants: number, chance: number, inTheEnd: number, unit = 'A', stuckOn = 0): Lot => ({ plants, unit, sticking: stickingOf({ unit, stuckOn }), chance, inTheEnd });
const varianceOf = (lots: readonly Lot[], past: readonly DatedStay[] = [], prior = PRIOR): number => stockSpread(past, prior)(lots) ** 2;

describe('by how much what comes may differ, worked by hand', () => {
  test('whether twelve of a tree come, even chances, likeness 1/5: 4/5 of 3, 1/5 of 36, and 36/20 that the prior is wrong', () => {
    expect(varianceOf([lot(12, 0.5, 0.5)])).toBeCloseTo(2.4 + 7.2 + 1.8, 9);
    expect(varianceOf([lot(5, 0.5, 0.5), lot(7, 0.5, 0.5, 'A', 100)])).toBeCloseTo(2.4 + 7.2 + 1.8, 9);
    expect(varianceOf([lot(6, 0.5, 0.5), lot(6, 0.5, 0.5, 'B')])).toBeCloseTo(2.4 + 3.6 + 1.8, 9);
  });

  test('when twelve that all come do so, half of them by the day: by sticking, likeness 3/10; and 36 that the prior’s days are wrong for all', () => {
    expect(varianceOf([lot(12, 0.5, 1)])).toBeCloseTo(2.1 + 10.8 + 36, 9);
    expect(varianceOf([lot(6, 0.5, 1), lot(6, 0.5, 1, 'A', 100)])).toBeCloseTo(2.1 + 5.4 + 36, 9);
  });

  test('whether and when, a half each: 1/16 a plant for the one, the other, and both at once', () => {
    expect(varianceOf([lot(12, 0.25, 0.5)])).toBeCloseTo(0.6 + 1.8 + 0.45 + (0.525 + 2.7 + 9) + (0.94 * 0.75 + 0.06 * 9), 9);
  });

  test('what cannot come, and what has come, differs by nothing', () => {
    expect(varianceOf([lot(12, 0, 0), lot(12, 1, 1)])).toBe(0);
  });
});

describe('what the past has told, worked by hand', () => {
  const prior = { ...PRIOR, plants: 10 };

  test('of the same tree half of what sets it apart is known, another tree adds what sets it apart itself', () => {
    const past = [stay('A', 4, 'liner'), stay('A', 6, 'lost'), stay('A', 99, undefined), stay('A', 99, 'lost', { state: 'liner' })];
    // Ten told beside a prior of ten: 6 less half of 6, or 6 and half of 6 apart; and (8 + 10) x (6/20)^2.
    expect(varianceOf([lot(12, 0.5, 0.5)], past, prior)).toBeCloseTo(2.4 + 0.2 * 9 + 1.62, 9);
    expect(varianceOf([lot(12, 0.5, 0.5, 'B')], past, prior)).toBeCloseTo(2.4 + 0.2 * 45 + 1.62, 9);
  });

  test('so it is with stickings and when, told by those that moved on', () => {
    const past = [stay('A', 10, 'liner'), stay('A', 50, 'lost'), stay('A', 50, undefined), stay('A', 50, 'potted', { state: 'liner' })];
    // The prior’s ten days err as one: (7 + 100) x (6/20)^2.
    expect(varianceOf([lot(12, 0.5, 1)], past, prior)).toBeCloseTo(2.1 + 0.3 * 9 + 9.63, 9);
    expect(varianceOf([lot(12, 0.5, 1, 'A', 100)], past, prior)).toBeCloseTo(2.1 + 0.3 * 45 + 9.63, 9);
  });

  describe('five stickings tell themselves how alike plants move on: 8, 8, 2, 2, 5 of ten by the day by which half had', () => {
    const movedOn = (state: 'cutting' | 'liner', to: DatedStay['to'], from: number) => [8, 8, 2, 2, 5].flatMap((soon, nth) => [
      stay('A', 10 - soon, to, { state, stuckOn: nth, from, until: from + 200 }), stay('A', soon, to, { state, stuckOn: nth, from, until: from + 140 }),
      stay('A', 30, 'lost', { state, stuckOn: nth, from, until: from + 10 }), stay('A', 30, undefined, { state, stuckOn: nth, from, until: from + 300 }),
    ]);
    // Of another sticking: 6 apart, and five times a tenth of 12 that the past had, with no prior to speak of.
    const varianceWith = (alike: number): number => (1 - alike) * 3 + alike * (36 + 5 * 1.2 ** 2) + (1 - alike) * 50 * (6 / 50) ** 2;

    test('cuttings alone: 2.6/9', () => {
      expect(varianceOf([lot(12, 0.5, 1, 'B', 50)], movedOn('cutting', 'liner', 0), { ...prior, plants: 1e-9 })).toBeCloseTo(varianceWith(2.6 / 9), 6);
    });

    test('and their young plants just so, by a middle day of their own: (7.2 - 9/4) / (81/4)', () => {
      const past = [...movedOn('liner', 'potted', 140), ...movedOn('cutting', 'liner', 0)];
      expect(varianceOf([lot(12, 0.5, 1, 'B', 50)], past, { ...prior, plants: 1e-9 })).toBeCloseTo(varianceWith(4.95 / 20.25), 6);
    });
  });
});
