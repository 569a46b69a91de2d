import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { donorRatioInterval } from './donor-ratio-interval.ts';
import { donorSpread } from './donor-spread.ts';

const tens = (...alive: number[]) => new Map(alive.map((successes, i) => [`d${i}`, { successes, plants: 10 }]));

describe('donorSpread', () => {
  test('is the interval by donors from five donors on', () => {
    const five = tens(8, 10, 6, 9, 7);

    expect(donorSpread(five)).toEqual({ kind: 'interval', ...donorRatioInterval([...five.values()]) });
  });

  test('names the best and the worst of four', () => {
    expect(donorSpread(tens(8, 10, 6, 9))).toEqual({
      kind: 'best-and-worst',
      because: 'few-donors',
      donors: 4,
      best: { donorId: 'd1', successes: 10, plants: 10, rate: 1 },
      worst: { donorId: 'd2', successes: 6, plants: 10, rate: 3 / 5 },
    });
  });

  test('does not pretend to a spread where all donors are alike', () => {
    expect(donorSpread(tens(0, 0, 0, 0, 0, 0))).toMatchObject({ because: 'donors-all-alike', donors: 6 });
  });

  test('of equal shares it names the donor with more plants, then the first by id', () => {
    const outcomes = new Map([
      ['z', { successes: 5, plants: 10 }],
      ['b', { successes: 10, plants: 20 }],
      ['a', { successes: 10, plants: 20 }],
    ]);

    expect(donorSpread(outcomes)).toMatchObject({ best: { donorId: 'a' }, worst: { donorId: 'a' } });
  });

  test('has nothing to say without plants', () => {
    expect(donorSpread(new Map())).toBeUndefined();
    expect(donorSpread(new Map([['a', { successes: 0, plants: 0 }]]))).toBeUndefined();
  });

  test('the best is never below the worst, and the order of donors does not matter', () => {
    const outcome = fc
      .integer({ min: 1, max: 50 })
      .chain((plants) => fc.record({ successes: fc.integer({ min: 0, max: plants }), plants: fc.constant(plants) }));
    fc.assert(
      fc.property(fc.uniqueArray(fc.tuple(fc.string(), outcome), { maxLength: 4, selector: ([id]) => id }), (rows) => {
        const spread = donorSpread(new Map(rows));

        expect(donorSpread(new Map(rows.toReversed()))).toEqual(spread);
        if (spread?.kind === 'best-and-worst') expect(spread.best.rate).toBeGreaterThanOrEqual(spread.worst.rate);
      }),
    );
  });
});
