import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenShares } from './even-shares.ts';
import { fewestStops } from './fewest-stops.ts';
import { pickPlants, type Pick, type Supply } from './pick-plants.ts';

const supply = (batchId: string, donor: string, free: number, stop: string): Supply => ({ batchId, donor, free, stop });
const WALK = ['s1', 's2', 's3', 's4'];

describe('evenShares', () => {
  test.each([
    // Worked by hand: 10 of three trees is 4 + 3 + 3.
    { wanted: 10, most: [9, 9, 9], shares: { level: 3, extra: 1, total: 10 } },
    // The tree with 1 gives it; 9 are left for two trees, 5 + 4.
    { wanted: 10, most: [1, 9, 9], shares: { level: 4, extra: 1, total: 10 } },
    { wanted: 2, most: [5, 5, 5], shares: { level: 0, extra: 2, total: 2 } },
    { wanted: 100, most: [3, 0, 4], shares: { level: 4, extra: 0, total: 7 } },
    { wanted: 5, most: [], shares: { level: 0, extra: 0, total: 0 } },
  ])('shares $wanted among $most', ({ wanted, most, shares }) => {
    expect(evenShares(wanted, most)).toEqual(shares);
  });

  test.each([[0, [1]], [-1, [1]], [1.5, [2]], [3, [-1]], [3, [Number.NaN]]])('refuses %d of %j', (wanted, most) => {
    expect(() => evenShares(wanted, most)).toThrow(expect.objectContaining({ code: 'request/not-a-count' }));
  });
});

describe('pickPlants', () => {
  test('takes from every donor tree before it takes twice from one', () => {
    const pick = pickPlants({ plants: 4 }, [supply('a', 'CR-1', 50, 's1'), supply('b', 'CR-2', 1, 's2'), supply('c', 'CR-3', 9, 's3')], WALK);

    // 1 + 1 + 1, and the odd one from the tree with most left.
    expect(pick).toEqual({ lines: [{ batchId: 'a', n: 2 }, { batchId: 'b', n: 1 }, { batchId: 'c', n: 1 }], plants: 4, short: 0, donors: 3, stops: 3, isShortestProven: true });
  });

  test('never takes more of one donor tree than the request allows, and says what is short', () => {
    const supplies = [supply('a', 'CR-1', 50, 's1'), supply('b', 'CR-1', 50, 's2'), supply('c', 'CR-2', 2, 's1')];

    expect(pickPlants({ plants: 10, mostPerDonor: 3 }, supplies, WALK)).toMatchObject({ plants: 5, short: 5, donors: 2, stops: 1 });
  });

  test('spares a stop where the same trees stand together', () => {
    const supplies = [supply('a', 'CR-1', 5, 's1'), supply('b', 'CR-2', 5, 's2'), supply('c', 'CR-1', 5, 's3'), supply('d', 'CR-2', 5, 's3')];

    expect(pickPlants({ plants: 6 }, supplies, WALK).lines).toEqual([{ batchId: 'c', n: 3 }, { batchId: 'd', n: 3 }]);
  });

  test('walks further rather than lose a donor tree', () => {
    const supplies = [supply('a', 'CR-1', 50, 's1'), supply('b', 'CR-2', 1, 's4')];

    expect(pickPlants({ plants: 10 }, supplies, WALK)).toMatchObject({ donors: 2, stops: 2 });
  });

  test('has nothing to take where nothing is', () => {
    expect(pickPlants({ plants: 3 }, [supply('a', 'CR-1', 0, 's1')], WALK)).toEqual({ lines: [], plants: 0, short: 3, donors: 0, stops: 0, isShortestProven: true });
  });

  test.each([{ plants: 0 }, { plants: 2, mostPerDonor: 0 }, { plants: 2, mostPerDonor: 1.5 }])('refuses %j', (wish) => {
    expect(() => pickPlants(wish, [supply('a', 'CR-1', 5, 's1')], WALK)).toThrow(expect.objectContaining({ code: 'request/not-a-count' }));
  });

  const case_ = fc.record({
    supplies: fc.array(fc.tuple(fc.integer({ min: 0, max: 2 }), fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 3 })), { minLength: 1, maxLength: 5 })
      .map((all) => all.map(([donor, free, stop], at) => supply(`b${at}`, `d${donor}`, free, WALK[stop] ?? 's1'))),
    plants: fc.integer({ min: 1, max: 8 }),
    mostPerDonor: fc.option(fc.integer({ min: 1, max: 3 }), { nil: undefined }),
  });

  test('no other pick is better, as trying all of them shows', () => {
    fc.assert(fc.property(case_, ({ supplies, plants, mostPerDonor }) => {
      const pick = pickPlants({ plants, mostPerDonor }, supplies, WALK);
      const best = all(supplies, plants, mostPerDonor).reduce((one, other) => (isBetter(other, one) ? other : one));

      expect(worthOf(pick.lines, supplies)).toEqual(best);
      expect(pick).toMatchObject({ plants: 0 - (best[0] ?? 0), donors: 0 - (best[1] ?? 0), stops: best[3], isShortestProven: true });
    }), { numRuns: 300 });
  });

  test('takes only what is there, each batch once, and the order of the supplies changes nothing', () => {
    fc.assert(fc.property(case_, ({ supplies, plants, mostPerDonor }) => {
      const pick = pickPlants({ plants, mostPerDonor }, supplies, WALK);

      expect(pickPlants({ plants, mostPerDonor }, supplies.toReversed(), WALK)).toEqual(pick);
      expect(new Set(pick.lines.map(({ batchId }) => batchId)).size).toBe(pick.lines.length);
      for (const { batchId, n } of pick.lines) expect(n).toBeLessThanOrEqual(supplies.find((one) => one.batchId === batchId)?.free ?? 0);
      expect(sumOf(pick) + pick.short).toBe(plants);
    }));
  });

  test('a hall of 300 trays is picked from without trying every walk', () => {
    const walk = Array.from({ length: 300 }, (_, at) => `s${at}`);
    const supplies = walk.flatMap((stop, at) => [supply(`x${at}`, `d${at % 37}`, 1 + (at % 5), stop), supply(`y${at}`, `d${(at * 7) % 37}`, 2, stop)]);
    const pick = pickPlants({ plants: 200, mostPerDonor: 10 }, supplies, walk);

    expect(pick).toMatchObject({ plants: 200, donors: 37 });
    expect(fewestStops(walk, (stops) => stops.size >= 3).stops).toEqual(['s0', 's1', 's2']);
  });
});

const sumOf = ({ lines }: Pick): number => lines.reduce((sum, { n }) => sum + n, 0);

/** How good a pick is: plants, donors, sum of squared shares, stops; the smaller in the first that differs, the better. */
function worthOf(lines: Pick['lines'], supplies: readonly Supply[]): number[] {
  const shares = new Map<string, number>();
  const stops = new Set<string>();
  for (const { batchId, n } of lines) {
    const from = supplies.find((one) => one.batchId === batchId)!;
    shares.set(from.donor, (shares.get(from.donor) ?? 0) + n);
    stops.add(from.stop);
  }
  const all = [...shares.values()];
  return [0 - all.reduce((sum, n) => sum + n, 0), 0 - all.length, all.reduce((sum, n) => sum + n * n, 0), stops.size];
}

function isBetter(one: readonly number[], other: readonly number[]): boolean {
  const at = one.findIndex((value, index) => value !== other[index]);
  return at !== -1 && one[at]! < other[at]!;
}

/** The worth of every pick there is. */
function all(supplies: readonly Supply[], plants: number, mostPerDonor = Infinity): number[][] {
  let picks: { batchId: string; n: number }[][] = [[]];
  for (const { batchId, free } of supplies) picks = picks.flatMap((lines) => Array.from({ length: free + 1 }, (_, n) => (n === 0 ? lines : [...lines, { batchId, n }])));
  const isFair = (lines: Pick['lines']): boolean => {
    const shares = new Map<string, number>();
    for (const { batchId, n } of lines) {
      const { donor } = supplies.find((one) => one.batchId === batchId)!;
      shares.set(donor, (shares.get(donor) ?? 0) + n);
    }
    return [...shares.values()].every((n) => n <= mostPerDonor);
  };
  return picks.filter((lines) => lines.reduce((sum, { n }) => sum + n, 0) <= plants && isFair(lines)).map((lines) => worthOf(lines, supplies));
}
