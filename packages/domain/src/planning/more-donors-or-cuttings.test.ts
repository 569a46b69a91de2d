import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { moreDonorsOrCuttings } from './more-donors-or-cuttings.ts';

describe('one more donor tree, or more cuttings', () => {
  test('worked by hand: two trees, a cutting of each, every second one comes through', () => {
    const { asPlanned, oneMoreTree, moreCuttings } = moreDonorsOrCuttings(2, 1, { mean: 0.5, likeness: 0 });
    // A tree stays out (1/2), or brings two copies that both lack the variant: 1/2 + 1/2 x 0.95^2.
    expect(asPlanned.capture).toBeCloseTo(1 - 0.95125 ** 2, 12);
    expect(oneMoreTree).toMatchObject({ trees: 3, cuttings: 3, capture: expect.closeTo(1 - 0.95125 ** 3, 12) });
    expect(moreCuttings).toMatchObject({ trees: 2, cuttingsPerDonor: 2, capture: expect.closeTo(1 - (0.25 + 0.75 * 0.9025) ** 2, 12) });
  });
  test('one more tree always adds', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 20 }), fc.double({ min: 0.05, max: 0.95, noNaN: true }), fc.double({ min: 0, max: 0.8, noNaN: true }), (trees, cuttings, mean, likeness) => {
      const { asPlanned, oneMoreTree } = moreDonorsOrCuttings(trees, cuttings, { mean, likeness });
      expect(oneMoreTree.capture).toBeGreaterThan(asPlanned.capture);
      expect(oneMoreTree.expectedDonors).toBeGreaterThan(asPlanned.expectedDonors);
    }), { numRuns: 60 });
  });
  test('a frequency of nothing is refused', () => expect(() => moreDonorsOrCuttings(2, 1, { mean: 0.5, likeness: 0 }, undefined, 0)).toThrow(expect.objectContaining({ code: 'diversity/not-a-frequency' })));
  test.each([[0, 1], [1, 0], [1.5, 1], [1, 1.5], [-1, 1], [1, -1]])('%d trees of %d cuttings are no plan', (trees, cuttings) => {
    expect(() => moreDonorsOrCuttings(trees, cuttings, { mean: 0.5, likeness: 0 })).toThrow(expect.objectContaining({ code: 'survival/not-a-count' }));
  });
});
