import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { settledRate, type StageEnds } from './settled-rate.ts';

const NONE: StageEnds = {
  goneOn: 0,
  died: 0,
  unaccounted: 0,
  notRooted: 0,
  thrownOut: 0,
  givenOut: 0,
  restuck: 0,
  stillHere: 0,
};

describe('settledRate', () => {
  // Anton V, Hartley S, Wittmer HU (2015) NZ J. Ecol. 39(2):170 ff.: first-year mortality 38 %
  // of 743, 20 % of 666, 11 % of 701, printed to whole per cent; deaths computed back from these.
  test.each([
    { plants: 743, died: 282, survival: 0.62 },
    { plants: 666, died: 133, survival: 0.8 },
    { plants: 701, died: 77, survival: 0.89 },
  ])('agrees with the printed survival of $plants planted trees', ({ plants, died, survival }) => {
    const { rate } = settledRate({ ...NONE, goneOn: plants - died, died });

    expect(Math.abs((rate ?? 0) - survival)).toBeLessThanOrEqual(0.005);
  });

  // 100 came in: 30 went on; 20 died, 5 unaccounted, 10 not rooted, 15 thrown out; 4 given out, 6 taken out, 10 here.
  // Settled 80, so 30/80; decided 80 of 90, so 10/90 open; none of the rest 30/90, all of the rest 40/90.
  test('agrees with a case worked by hand', () => {
    const ends = { goneOn: 30, died: 20, unaccounted: 5, notRooted: 10, thrownOut: 15, givenOut: 4, restuck: 6, stillHere: 10 };

    expect(settledRate(ends)).toEqual({
      goneOn: 30,
      settled: 80,
      undecided: 10,
      undecidedShare: 1 / 9,
      leftWithoutVerdict: 10,
      rate: 3 / 8,
      range: { lower: 1 / 3, upper: 4 / 9 },
      needsRange: true,
      isRankable: true,
    });
  });

  test.each([
    { stillHere: 10, needsRange: false, isRankable: true },
    { stillHere: 11, needsRange: true, isRankable: true },
    { stillHere: 90, needsRange: true, isRankable: true },
    { stillHere: 91, needsRange: true, isRankable: false },
  ])('with 90 settled and $stillHere open: range $needsRange, rank $isRankable', ({ stillHere, ...expected }) => {
    expect(settledRate({ ...NONE, goneOn: 45, died: 45, stillHere })).toMatchObject(expected);
  });

  test('has no rate, and the whole range, while nothing is settled', () => {
    const open = settledRate({ ...NONE, stillHere: 12 });

    expect(open).not.toHaveProperty('rate');
    expect(open).toMatchObject({ undecidedShare: 1, range: { lower: 0, upper: 1 }, needsRange: true, isRankable: false });
  });

  const plants = fc.integer({ min: 0, max: 10_000 });
  const anyEnds = fc
    .record({
      goneOn: plants,
      died: plants,
      unaccounted: plants,
      notRooted: plants,
      thrownOut: plants,
      givenOut: plants,
      restuck: plants,
      stillHere: plants,
    })
    .filter((ends) => ends.goneOn + ends.died + ends.unaccounted + ends.notRooted + ends.thrownOut > 0);

  test('whatever becomes of the open ones, the final rate lies in the range', () => {
    fc.assert(
      fc.property(anyEnds, fc.double({ min: 0, max: 1, noNaN: true }), (ends, luck) => {
        const goingOn = Math.round(ends.stillHere * luck);
        const dying = ends.stillHere - goingOn;
        const final = settledRate({ ...ends, goneOn: ends.goneOn + goingOn, died: ends.died + dying, stillHere: 0 });
        const { range, rate } = settledRate(ends);

        expect(final.rate).toBeGreaterThanOrEqual(range.lower);
        expect(final.rate).toBeLessThanOrEqual(range.upper);
        expect(rate).toBeGreaterThanOrEqual(range.lower);
        expect(rate).toBeLessThanOrEqual(range.upper);
      }),
    );
  });

  test('plants given out or taken out unrooted change nothing in the rate', () => {
    fc.assert(
      fc.property(anyEnds, plants, plants, (ends, givenOut, restuck) => {
        const { leftWithoutVerdict: before, ...without } = settledRate(ends);
        const { leftWithoutVerdict: after, ...withThem } = settledRate({ ...ends, givenOut, restuck });

        expect(withThem).toEqual(without);
        expect(after - before).toBe(givenOut + restuck - ends.givenOut - ends.restuck);
      }),
    );
  });

  test.each([
    ['survival/no-plants', NONE],
    ['survival/no-plants', { ...NONE, givenOut: 3 }],
    ['survival/not-a-count', { ...NONE, died: -1 }],
    ['survival/not-a-count', { ...NONE, restuck: Number.NaN }],
    ['survival/not-a-count', { ...NONE, stillHere: 0.5 }],
  ])('answers %s', (code, ends) => {
    expect(() => settledRate(ends)).toThrow(expect.objectContaining({ name: 'DomainError', code }));
  });
});
