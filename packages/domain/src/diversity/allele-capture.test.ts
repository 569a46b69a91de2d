import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { alleleCapture } from './allele-capture.ts';

describe('alleleCapture', () => {
  // Brown AHD, Marshall DR (1995): 30 random outbreeders hold 95 % of alleles of frequency 0.05; one fewer does not.
  test('agrees with Brown and Marshall 1995 on thirty outbreeding plants', () => {
    expect(alleleCapture(30, 0.05)).toBeGreaterThanOrEqual(0.95);
    expect(alleleCapture(29, 0.05)).toBeLessThan(0.95);
  });

  // Half of the copies: one donor holds it with 1 - 1/4, two with 1 - 1/16. A tenth, one donor: 1 - 81/100.
  test.each([
    { donors: 0, frequency: 0.5, chance: 0 },
    { donors: 1, frequency: 0.5, chance: 3 / 4 },
    { donors: 2, frequency: 0.5, chance: 15 / 16 },
    { donors: 1, frequency: 0.1, chance: 19 / 100 },
  ])('agrees with $donors donors at $frequency worked by hand', ({ donors, frequency, chance }) => {
    expect(alleleCapture(donors, frequency)).toBeCloseTo(chance, 14);
  });

  test('two collections miss an allele only when both do', () => {
    const donors = fc.integer({ min: 0, max: 300 });
    fc.assert(
      fc.property(donors, donors, fc.double({ min: 0.001, max: 0.5, noNaN: true }), (here, there, frequency) => {
        const missed = (1 - alleleCapture(here, frequency)) * (1 - alleleCapture(there, frequency));
        expect(1 - alleleCapture(here + there, frequency)).toBeCloseTo(missed, 12);
      }),
    );
  });

  test.each([
    ['diversity/not-a-count', -1, 0.05],
    ['diversity/not-a-count', 2.5, 0.05],
    ['diversity/not-a-count', Number.NaN, 0.05],
    ['diversity/not-a-frequency', 3, 0],
    ['diversity/not-a-frequency', 3, 1],
    ['diversity/not-a-frequency', 3, Number.NaN],
  ])('answers %s for %d donors at %d', (code, donors, frequency) => {
    expect(() => alleleCapture(donors, frequency)).toThrow(
      expect.objectContaining({ name: 'DomainError', code }),
    );
  });
});
