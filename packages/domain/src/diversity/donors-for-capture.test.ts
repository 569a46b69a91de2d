import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { alleleCapture } from './allele-capture.ts';
import { donorsForCapture } from './donors-for-capture.ts';

describe('donorsForCapture', () => {
  // Brown AHD, Marshall DR (1995): 95 % of alleles of frequency 0.05 need 59 copies: 59 selfed or 30 outbred plants.
  test('agrees with Brown and Marshall 1995', () => {
    expect(donorsForCapture(0.95, 0.05)).toEqual({ copies: 59, donors: 30 });
  });

  // Whole answers: (1/2)^2 = 1 - 3/4; (9/10)^2 = 1 - 19/100; (1/10)^2 = 1 - 99/100; (4/5)^3 = 1 - 61/125.
  // The last two come out of the logarithms as 2.0000000000000004 and 3.000000000000001: (7/10)^2 = 1 - 51/100, ^3 = 1 - 657/1000.
  test.each([
    { chance: 0.75, frequency: 0.5, copies: 2 },
    { chance: 0.19, frequency: 0.1, copies: 2 },
    { chance: 0.99, frequency: 0.9, copies: 2 },
    { chance: 0.488, frequency: 0.2, copies: 3 },
    { chance: 0.01, frequency: 0.5, copies: 1 },
    { chance: 0.51, frequency: 0.3, copies: 2 },
    { chance: 0.657, frequency: 0.3, copies: 3 },
  ])('agrees with $chance at $frequency worked by hand', ({ chance, frequency, copies }) => {
    expect(donorsForCapture(chance, frequency)).toEqual({ copies, donors: Math.ceil(copies / 2) });
  });

  test('the donors asked for are enough, and one fewer is not', () => {
    const chance = fc.double({ min: 0.01, max: 0.999, noNaN: true });
    const frequency = fc.double({ min: 0.005, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(chance, frequency, (wanted, rarity) => {
        const { donors } = donorsForCapture(wanted, rarity);
        expect(alleleCapture(donors, rarity)).toBeGreaterThanOrEqual(wanted - 1e-12);
        expect(alleleCapture(donors - 1, rarity)).toBeLessThan(wanted);
      }),
    );
  });

  test.each([
    ['diversity/not-a-chance', 0, 0.05],
    ['diversity/not-a-chance', 1, 0.05],
    ['diversity/not-a-chance', Number.NaN, 0.05],
    ['diversity/not-a-frequency', 0.95, 0],
    ['diversity/not-a-frequency', 0.95, 1],
    ['diversity/not-a-frequency', 0.95, Number.NaN],
  ])('answers %s for %d at %d', (code, chance, frequency) => {
    expect(() => donorsForCapture(chance, frequency)).toThrow(
      expect.objectContaining({ name: 'DomainError', code }),
    );
  });
});
