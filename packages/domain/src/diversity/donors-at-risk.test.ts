import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DonorHolding, donorsAtRisk, type WildTree } from './donors-at-risk.ts';

const LIMITS = { fewRooted: 3, fallenBy: 0.5 };
const SAFE: DonorHolding = { donorId: 'a', rootedNow: 40, rootedEarlier: [42, 40], wildTree: 'standing', places: 2 };
const risksOf = (holding: Partial<DonorHolding>) => donorsAtRisk([{ ...SAFE, ...holding }], LIMITS)[0]?.risks;

describe('donorsAtRisk', () => {
  test('leaves a donor in peace that has plants, in two places', () => {
    expect(risksOf({})).toBeUndefined();
  });

  test.each([
    { holding: { rootedNow: 4, rootedEarlier: [7] }, risks: undefined },
    { holding: { rootedNow: 3, rootedEarlier: [] }, risks: ['few-rooted'] },
    { holding: { rootedNow: 0, rootedEarlier: [] }, risks: ['none-rooted'] },
    { holding: { rootedNow: 21 }, risks: ['falling'] },
    { holding: { rootedNow: 22 }, risks: undefined },
    { holding: { rootedNow: 20, rootedEarlier: [10, 40, 21] }, risks: ['falling'] },
    { holding: { places: 1 }, risks: undefined },
    { holding: { wildTree: 'dead' }, risks: undefined },
    { holding: { places: 1, wildTree: 'unknown' }, risks: undefined },
    { holding: { places: 1, wildTree: 'dead' }, risks: ['one-place', 'last-copies'] },
    { holding: { places: 1, wildTree: 'notSeen' }, risks: ['one-place', 'perhaps-last-copies'] },
    { holding: { rootedNow: 2, rootedEarlier: [], wildTree: 'dead' }, risks: ['few-rooted', 'last-copies'] },
    { holding: { rootedNow: 0, places: 0, wildTree: 'dead' }, risks: ['none-rooted', 'falling', 'last-copies'] },
  ] satisfies Array<{ holding: Partial<DonorHolding>; risks: string[] | undefined }>)(
    'says $risks of $holding',
    ({ holding, risks }) => {
      expect(risksOf(holding)).toEqual(risks);
    },
  );

  test('puts last copies first, then perhaps last ones, then the fewest rooted', () => {
    const holdings: DonorHolding[] = [
      { ...SAFE, donorId: 'b', rootedNow: 2 },
      { ...SAFE, donorId: 'c', rootedNow: 1 },
      { ...SAFE, donorId: 'd', rootedNow: 3, wildTree: 'notSeen' },
      { ...SAFE, donorId: 'e', rootedNow: 3, wildTree: 'dead' },
      { ...SAFE, donorId: 'f' },
      { ...SAFE, donorId: 'a', rootedNow: 2 },
    ];

    expect(donorsAtRisk(holdings, LIMITS).map(({ donorId }) => donorId)).toEqual(['e', 'd', 'c', 'a', 'b']);
  });

  const holding = fc.record({
    donorId: fc.uuid(),
    rootedNow: fc.integer({ min: 0, max: 50 }),
    rootedEarlier: fc.array(fc.integer({ min: 0, max: 50 }), { maxLength: 3 }),
    wildTree: fc.constantFrom<WildTree>('standing', 'notSeen', 'dead', 'unknown'),
    places: fc.integer({ min: 0, max: 4 }),
  });
  const holdings = fc.uniqueArray(holding, { maxLength: 12, selector: ({ donorId }) => donorId });

  test('a further rooted plant never puts a donor at more risk', () => {
    fc.assert(
      fc.property(holding, (donor) => {
        const more = donorsAtRisk([{ ...donor, rootedNow: donor.rootedNow + 1 }], LIMITS);
        if (donorsAtRisk([donor], LIMITS).length === 0) expect(more).toEqual([]);
      }),
    );
  });

  test('the order in which donors are given does not matter, and every one with few is there', () => {
    fc.assert(
      fc.property(holdings, (donors) => {
        const listed = donorsAtRisk(donors, LIMITS);
        expect(donorsAtRisk(donors.toReversed(), LIMITS)).toEqual(listed);
        for (const { donorId, rootedNow } of donors) {
          if (rootedNow <= 3) expect(listed.map((d) => d.donorId)).toContain(donorId);
        }
      }),
    );
  });

  test.each([{ rootedNow: -1 }, { rootedNow: Number.NaN }, { rootedEarlier: [0.5] }, { places: -1 }])(
    'answers diversity/not-a-count for %o',
    (fault) => {
      expect(() => risksOf(fault)).toThrow(expect.objectContaining({ code: 'diversity/not-a-count' }));
    },
  );

  test.each([
    { fewRooted: 0, fallenBy: 0.5 },
    { fewRooted: 2.5, fallenBy: 0.5 },
    { fewRooted: 3, fallenBy: 0 },
    { fewRooted: 3, fallenBy: 1.1 },
    { fewRooted: 3, fallenBy: Number.NaN },
  ])('answers diversity/not-a-limit for %o', (limits) => {
    expect(() => donorsAtRisk([], limits)).toThrow(expect.objectContaining({ code: 'diversity/not-a-limit' }));
  });
});
