import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { diceOf } from '../random/dice.ts';
import { mendByExchange, placedGreedily } from './exchange.ts';
import { neighboursWithin } from './neighbours.ts';
import { gridOf } from './position.ts';

/** Positions in a row, each near the one before and the one after. */
const chain = (n: number) => Array.from({ length: n }, (_, at) => [at - 1, at + 1].filter((other) => other >= 0 && other < n));
/** All near each other. */
const crowd = (n: number) => Array.from({ length: n }, (_, at) => [...Array(n).keys()].filter((other) => other !== at));
const pairsNear = (donors: readonly number[], near: readonly (readonly number[])[]) => near.flatMap((around, at) => around.filter((other) => other > at && donors[other] === donors[at])).length;

describe('placed one after the other', () => {
  test('worked by hand: whoever has most plants left, unless a copy stands near', () => {
    // Five, three and one: the second donor stands between plants of the first, as long as no other has as many left.
    expect(placedGreedily([5, 3, 1], chain(9), diceOf(1)).slice(0, 5)).toEqual([0, 1, 0, 1, 0]);
    expect(placedGreedily([1, 3, 5], chain(9), diceOf(1)).slice(0, 5)).toEqual([2, 1, 2, 1, 2]);
  });

  test('worked by hand: where copies of all stand near, whoever has most left', () => {
    for (const seed of [1, 2, 3, 4]) {
      expect(placedGreedily([5, 2], crowd(7), diceOf(seed)).slice(0, 5)).toEqual([0, 1, 0, 0, 0]);
      expect(placedGreedily([2, 5], crowd(7), diceOf(seed)).slice(0, 5)).toEqual([1, 0, 1, 1, 1]);
    }
    expect(placedGreedily([3, 0], crowd(3), diceOf(1))).toEqual([0, 0, 0]);
  });

  test('the free one stands, however few it has left', () => {
    for (const seed of [1, 2, 3, 4]) expect(placedGreedily([9, 1, 1], crowd(11), diceOf(seed)).slice(1, 3).sort()).toEqual([1, 2]);
  });

  test('of equal ones the dice decide', () => {
    const first = new Set(Array.from({ length: 20 }, (_, seed) => placedGreedily([1, 1], chain(2), diceOf(seed)).join('')));
    expect([...first].sort()).toEqual(['01', '10']);
  });
});

describe('mended by exchange', () => {
  test('two neighbours of a row change places, and then no copies touch', () => {
    for (const seed of [1, 2, 3]) {
      const donors = [0, 0, 1, 1];
      mendByExchange(donors, 2, chain(4), diceOf(seed));
      expect(pairsNear(donors, chain(4))).toBe(0);
      expect([...donors].sort()).toEqual([0, 0, 1, 1]);
    }
  });

  test('of four donors planted in blocks hardly a pair of copies is left side by side', () => {
    const blocks = [0, 1, 2, 3].flatMap((donor) => Array.from({ length: 9 }, () => donor));
    const near = neighboursWithin(gridOf(6, 6), 1.1);
    expect(pairsNear(blocks, near)).toBeGreaterThan(30);
    for (const seed of [1, 2, 3, 4, 5]) {
      const donors = [...blocks];
      mendByExchange(donors, 4, near, diceOf(seed));
      expect(pairsNear(donors, near)).toBeLessThanOrEqual(2);
    }
  });

  test('what is well stays as it is', () => {
    const donors = [0, 1, 0, 1, 0];
    mendByExchange(donors, 2, chain(5), () => expect.unreachable());
    expect(donors).toEqual([0, 1, 0, 1, 0]);
  });

  test('never makes it worse, nor changes what there is; where nothing can be won it ends', () => {
    fc.assert(fc.property(fc.array(fc.nat(3), { minLength: 2, maxLength: 24 }), fc.double({ min: 1.1, max: 3, noNaN: true }), fc.integer(), (before, distance, seed) => {
      const near = neighboursWithin(gridOf(Math.ceil(before.length / 5), 5).slice(0, before.length), distance);
      const donors = [...before];
      mendByExchange(donors, 4, near, diceOf(seed));
      expect(pairsNear(donors, near)).toBeLessThanOrEqual(pairsNear(before, near));
      expect([...donors].sort()).toEqual([...before].sort());
    }));
    const alike = [0, 0, 0];
    mendByExchange(alike, 1, crowd(3), diceOf(1));
    expect(alike).toEqual([0, 0, 0]);
  });
});
