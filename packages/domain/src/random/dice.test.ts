import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { diceOf, shuffled } from './dice.ts';

/** sfc32 as its author prints it, in whole numbers without end cut to 32 bits: tmp = a + b + counter++; a = b ^ b >> 9; b = c + (c << 3); c = (c rotated by 21) + tmp. */
function* sfc32(seed: number): Generator<number> {
  const cut = (n: bigint) => BigInt.asUintN(32, n);
  let [a, b, c, counter] = [0x9e3779b9n, cut(BigInt(seed)), 0x243f6a88n, 1n];
  for (let fallen = 0; ; fallen += 1) {
    const sum = cut(a + b + counter);
    counter += 1n;
    [a, b, c] = [b ^ (b >> 9n), cut(c * 9n), cut(cut((c << 21n) | (c >> 11n)) + sum)];
    if (fallen >= 15) yield Number(sum) / 2 ** 32;
  }
}

describe('dice', () => {
  test('fall as the published recurrence does, after fifteen throws that nobody sees', () => {
    fc.assert(fc.property(fc.integer({ min: -(2 ** 31), max: 2 ** 31 - 1 }), (seed) => {
      const [ours, theirs] = [diceOf(seed), sfc32(seed)];
      expect(Array.from({ length: 40 }, ours)).toEqual(Array.from({ length: 40 }, () => theirs.next().value));
    }));
  });

  test('only the lower 32 bits of a seed count', () => expect(diceOf(2 ** 32 + 7)()).toBe(diceOf(7)()));

  test('no part of the range falls more often than chance allows', () => {
    const dice = diceOf(11);
    const fell = Array.from({ length: 20 }, () => 0);
    for (let thrown = 0; thrown < 20_000; thrown += 1) fell[Math.floor(dice() * 20)]! += 1;
    // Chi-square with 19 degrees of freedom: above 43.8 once in a thousand.
    expect(fell.reduce((sum, n) => sum + (n - 1000) ** 2 / 1000, 0)).toBeLessThan(43.8);
  });
});

describe('an order by chance', () => {
  test('worked by hand: the last changes with the one that the dice say, then the one before it', () => {
    const throws = [0.5, 0.9, 0];
    // Of four: 0.5 x 4 is place 2, then 0.9 x 3 is place 2 itself, then 0 x 2 is place 0.
    expect(shuffled(['a', 'b', 'c', 'd'], () => throws.shift()!)).toEqual(['b', 'a', 'd', 'c']);
    expect(throws).toEqual([]);
  });

  test('all six orders of three come up alike', () => {
    const dice = diceOf(3);
    const seen = new Map<string, number>();
    for (let dealt = 0; dealt < 6000; dealt += 1) {
      const order = shuffled(['a', 'b', 'c'], dice).join('');
      seen.set(order, (seen.get(order) ?? 0) + 1);
    }
    expect(seen.size).toBe(6);
    // Chi-square with 5 degrees of freedom: above 20.5 once in a thousand.
    expect([...seen.values()].reduce((sum, n) => sum + (n - 1000) ** 2 / 1000, 0)).toBeLessThan(20.5);
  });

  test('nothing is lost, nothing doubled, and what was handed over stays as it was', () => {
    fc.assert(fc.property(fc.array(fc.nat(9)), fc.integer(), (things, seed) => {
      const before = [...things];
      expect(shuffled(things, diceOf(seed)).sort()).toEqual([...before].sort());
      expect(things).toEqual(before);
    }));
  });
});
