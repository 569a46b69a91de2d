import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { diceOf } from '../random/dice.ts';
import { cardDeal } from './card-deal.ts';
import { evenCounts } from './even-counts.ts';
import { latticeOf } from './lattice.ts';
import { packingBound } from './packing-bound.ts';
import { plantingLayout } from './planting-layout.ts';
import { between, gridOf, type Position } from './position.ts';
import { classOf, sublatticesOf } from './sublattices.ts';

const donorsOf = (...counts: number[]) => new Map(counts.map((n, at) => [`CR-${at + 1}`, n]));
const sum = (counts: Iterable<number>) => [...counts].reduce((a, b) => a + b, 0);

/** Every pair looked at, the plainest way. */
function nearestByHand(donors: readonly string[], positions: readonly Position[]): number {
  let nearest = Number.POSITIVE_INFINITY;
  donors.forEach((donor, a) => donors.forEach((other, b) => { if (a < b && donor === other) nearest = Math.min(nearest, between(positions[a]!, positions[b]!)); }));
  return nearest;
}

describe('a planting layout', () => {
  test('two donors on a square grid stand like a chessboard: no two copies side by side', () => {
    const { nearest } = plantingLayout(donorsOf(8, 8), gridOf(4, 4), diceOf(1));
    expect(nearest).toBeCloseTo(Math.SQRT2, 9);
  });

  test('four donors on a square grid stand two steps apart, worked by hand', () => {
    expect(plantingLayout(donorsOf(9, 9, 9, 9), gridOf(6, 6), diceOf(3)).nearest).toBe(2);
  });

  test('positions that lie anyhow, in any order, are planted as well', () => {
    const dice = diceOf(5);
    const positions = Array.from({ length: 120 }, () => ({ x: dice() * 30, y: dice() * 30 }));
    const { donors, nearest } = plantingLayout(donorsOf(...Array.from({ length: 12 }, () => 10)), positions, diceOf(5));
    expect(nearest).toBeCloseTo(nearestByHand(donors, positions), 9);
    // Twelve copies by chance: the nearest two of some tree stand less than one apart.
    expect(nearest).toBeGreaterThan(3);
  });

  test('plants exactly what there is, says truly how near copies stand, and never beats the bound', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 8 }), fc.boolean(), fc.integer(), (counts, isOffset, seed) => {
      const plants = donorsOf(...counts);
      const positions = gridOf(Math.ceil(sum(counts) / 6), 6, 1.5, isOffset).slice(0, sum(counts));
      const layout = plantingLayout(plants, positions, diceOf(seed));
      for (const [donor, n] of plants) expect(layout.donors.filter((one) => one === donor)).toHaveLength(n);
      const truth = nearestByHand(layout.donors, positions);
      expect(layout.nearest === truth || Math.abs(layout.nearest - truth) < 1e-9).toBe(true);
      expect(truth === Number.POSITIVE_INFINITY ? layout.bound : truth).toBeLessThanOrEqual(layout.bound + 1e-9);
      expect(plantingLayout(plants, positions, diceOf(seed)).donors).toEqual(layout.donors);
    }), { numRuns: 30 });
  });

  // Hatcher AV, Weir RJ (1981): 30 clones and more, copies at least 27.4 m apart; on 3 m that asks more than 30 clones can give on a square.
  test('thirty donors on a 3 m grid: copies at least 12 m apart, and the bound says that 27 m cannot be', () => {
    const { nearest, bound } = plantingLayout(donorsOf(...Array.from({ length: 30 }, () => 10)), gridOf(15, 20, 3), diceOf(7));
    expect(nearest).toBeGreaterThanOrEqual(12);
    expect(bound).toBeLessThan(27.4);
  });

  test('one of each has no copies; not as many plants as positions is refused', () => {
    expect(plantingLayout(donorsOf(1, 1, 1, 1), gridOf(2, 2), diceOf(1)).nearest).toBe(Number.POSITIVE_INFINITY);
    expect(() => plantingLayout(donorsOf(3), gridOf(2, 2), diceOf(1))).toThrow(expect.objectContaining({ code: 'layout/not-as-many' }));
    expect(() => plantingLayout(donorsOf(1.5, 2.5), gridOf(2, 2), diceOf(1))).toThrow(expect.objectContaining({ code: 'survival/not-a-count' }));
    for (const odd of [{ x: Number.NaN, y: 0 }, { x: 0, y: Number.POSITIVE_INFINITY }]) expect(() => plantingLayout(donorsOf(2), [{ x: 0, y: 0 }, odd], diceOf(1))).toThrow(expect.objectContaining({ code: 'numbers/not-a-size' }));
  });

  test('worked by hand: each donor is told at the position as it came, whatever order it came in', () => {
    // Two pairs of far and near: copies stand on either side of the gap.
    const { donors, nearest, pairs, bound } = plantingLayout(donorsOf(2, 2), [{ x: 10, y: 0 }, { x: 1, y: 0 }, { x: 0, y: 0 }, { x: 11, y: 0 }], diceOf(1));
    expect(donors[0]).not.toBe(donors[3]);
    expect(donors[1]).not.toBe(donors[2]);
    expect(nearest).toBeGreaterThanOrEqual(9);
    expect([pairs, bound]).toEqual([nearest === 10 ? 2 : 1, 11]);
  });
});

describe('a lattice for each donor', () => {
  const widest = (positions: readonly Position[], classes: number) => sublatticesOf(latticeOf(positions)!, classes)[0]!;
  // Squares: shortest vectors (2,0), (2,1), (3,1), (5,4). Hexagons: sqrt(a^2 + a b + b^2) for (2,1) and (2,0).
  test.each([[4, false, 4], [5, false, 5], [10, false, 10], [40, false, 41], [7, true, 7], [4, true, 4]])('the widest of %d classes, offset %s, worked by hand', (classes, isOffset, square) => {
    expect(widest(gridOf(12, 12, 1, isOffset), classes).nearest).toBeCloseTo(Math.sqrt(square), 9);
  });

  test('classes share a plot out evenly where they fit, and a class is what its two steps lead to', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 12 }), fc.nat(20), fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 }), (classes, which, a, b) => {
      const all = sublatticesOf(latticeOf(gridOf(12, 12))!, classes);
      const one = all[which % all.length]!;
      const own = classOf(one, { a, b });
      expect(classOf(one, { a: a + one.p, b })).toBe(own);
      expect(classOf(one, { a: a + one.q, b: b + one.r })).toBe(own);
      const sizes = new Map<number, number>();
      for (const step of latticeOf(gridOf(classes, classes))!.steps) sizes.set(classOf(one, step), (sizes.get(classOf(one, step)) ?? 0) + 1);
      expect([...sizes.values()]).toEqual(Array.from({ length: classes }, () => classes));
    }));
  });

  test('a plot with gaps lies on a lattice, positions that lie anyhow do not', () => {
    expect(latticeOf(gridOf(6, 6, 2.5).filter((_, at) => at % 5 !== 0))).toMatchObject({ along: { x: 2.5, y: 0 }, across: { x: 0, y: 2.5 } });
    expect(latticeOf([{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 2.3, y: 1 }])).toBeUndefined();
  });
});

test('the bound of points on a line, and of two in a square, worked by hand', () => {
  expect(packingBound(5, gridOf(1, 9))).toBeCloseTo(2, 9);
  expect(packingBound(2, gridOf(2, 2))).toBeGreaterThanOrEqual(Math.SQRT2);
});

describe('a card deal', () => {
  test('no crate holds two of one donor, all plants are dealt, and crates are as few as can be', () => {
    fc.assert(fc.property(fc.array(fc.nat(20), { minLength: 1, maxLength: 15 }).filter((counts) => counts.some((n) => n > 0)), fc.integer({ min: 1, max: 30 }), fc.integer(), (counts, size, seed) => {
      const { crates } = cardDeal(donorsOf(...counts), size, diceOf(seed));
      for (const { donors } of crates) {
        expect(new Set(donors).size).toBe(donors.length);
        expect(donors.length).toBeLessThanOrEqual(size);
      }
      const dealt = crates.flatMap(({ donors }) => donors);
      for (const [donor, n] of donorsOf(...counts)) expect(dealt.filter((one) => one === donor)).toHaveLength(n);
      expect(crates).toHaveLength(Math.max(Math.ceil(sum(counts) / size), ...counts));
      const sizes = crates.map(({ donors }) => donors.length);
      expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
    }));
  });
  test('crates that share a donor lie apart, and the distance told is the true one', () => {
    fc.assert(fc.property(fc.array(fc.nat(6), { minLength: 1, maxLength: 15 }).filter((counts) => counts.some((n) => n > 0)), fc.integer({ min: 1, max: 12 }), fc.integer(), (counts, size, seed) => {
      const { crates, cratesApart, mostShared } = cardDeal(donorsOf(...counts), size, diceOf(seed));
      const gaps = crates.flatMap(({ donors }, one) => crates.flatMap((other, at) => (at > one && other.donors.some((donor) => donors.includes(donor)) ? [at - one] : [])));
      expect(cratesApart).toBe(Math.min(Number.POSITIVE_INFINITY, ...gaps));
      expect(mostShared).toBe(Math.max(...crates.map(({ donors }, at) => donors.filter((donor) => crates[at + 1]?.donors.includes(donor)).length)));
    }));
    // Twelve crates, three plants of each of eight trees: in strides of five around the table they lie two crates apart.
    expect(cardDeal(donorsOf(3, 3, 3, 3, 3, 3, 3, 3), 2, diceOf(2)).cratesApart).toBeGreaterThanOrEqual(2);
    expect(cardDeal(donorsOf(2, 2, 2, 2, 2), 2, diceOf(2)).cratesApart).toBe(2);
  });
  test('a crate carries one plant at least, and plants are whole', () => {
    expect(cardDeal(donorsOf(1, 1, 1), 1, diceOf(1)).crates).toHaveLength(3);
    for (const [n, size] of [[1, 0], [1, 1.5], [1, -1], [1.5, 4], [-1, 4]] as const) expect(() => cardDeal(donorsOf(n, 2), size, diceOf(1))).toThrow(expect.objectContaining({ code: 'survival/not-a-count' }));
  });
  test('one of each tree never meets a copy, and which stand in the first crate is for the dice', () => {
    expect(cardDeal(donorsOf(1, 1, 1, 1), 2, diceOf(1))).toMatchObject({ mostShared: 0, cratesApart: Number.POSITIVE_INFINITY });
    expect(new Set([1, 2, 3, 4, 5, 6].map((seed) => [...cardDeal(donorsOf(1, 1, 1, 1), 2, diceOf(seed)).crates[0]!.donors].sort().join())).size).toBeGreaterThan(2);
  });
  test('strides around the table, worked by hand: seven crates, three plants of each tree, two or three apart', () => {
    // Strides of 2 lay them at 0, 2, 4 of seven: two apart, and three around the end.
    for (const seed of [1, 2, 3]) expect(cardDeal(donorsOf(3, 3, 3, 3, 3, 3, 3), 3, diceOf(seed))).toMatchObject({ cratesApart: 2, mostShared: 0 });
    // Two plants of each tree in five crates: strides of 2 as well.
    expect(cardDeal(donorsOf(2, 2, 2, 2, 2), 2, diceOf(4)).mostShared).toBe(0);
  });
  test('nothing to deal is refused', () => expect(() => cardDeal(donorsOf(0), 5, diceOf(1))).toThrow(expect.objectContaining({ code: 'survival/no-plants' })));
});

describe('even contributions', () => {
  test('worked by hand: of 3, 10 and 20 twenty are wanted', () => expect([...evenCounts(donorsOf(3, 10, 20), 20).values()]).toEqual([3, 8, 9]));
  test('worked by hand: none are wanted, all are; the odd one comes from the tree with most, of equal ones from the first', () => {
    const of = (counts: readonly number[], wanted: number) => [...evenCounts(donorsOf(...counts), wanted).values()];
    expect([of([3, 10], 0), of([3, 10], 13), of([4, 5, 9], 7), of([5, 5, 2], 7), of([0, 0], 0)]).toEqual([[0, 0], [3, 10], [2, 2, 3], [3, 2, 2], [0, 0]]);
  });
  test.each([[[3, 4], 8, 'diversity/more-than-there-are'], [[3, 4], 1.5, 'survival/not-a-count'], [[3, 4], -1, 'survival/not-a-count'], [[3, 1.5], 2, 'survival/not-a-count']])('of %j, %d are refused', (counts, wanted, code) => {
    expect(() => evenCounts(donorsOf(...counts), wanted)).toThrow(expect.objectContaining({ code }));
  });
  test('take what is wanted, never more than is there, and nobody who could give has two less than another', () => {
    fc.assert(fc.property(fc.array(fc.nat(30), { minLength: 1, maxLength: 10 }), fc.double({ min: 0, max: 1, noNaN: true }), (counts, part) => {
      const wanted = Math.floor(sum(counts) * part);
      const taken = [...evenCounts(donorsOf(...counts), wanted).values()];
      expect(sum(taken)).toBe(wanted);
      taken.forEach((n, at) => {
        expect(n).toBeLessThanOrEqual(counts[at]!);
        if (n < counts[at]!) expect(Math.max(...taken) - n).toBeLessThanOrEqual(1);
      });
    }));
  });
});
