import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { STAGES } from '../ledger/entry.ts';
import { diversityOfStand, type StandPlants } from './diversity-of-stand.ts';
import { hillNumber } from './hill-number.ts';

describe('diversityOfStand', () => {
  // Liners 5 3 2: squares 38 of 100. Capture of three donors 1 - .95^6. A mixed pot of A or D: one more at most.
  test('agrees with a case worked by hand', () => {
    const [cutting, liner, potted, planted] = diversityOfStand([
      { stage: 'liner', donorId: 'A', plants: 3 },
      { stage: 'liner', donorId: 'B', plants: 3 },
      { stage: 'liner', donorId: 'A', plants: 2 },
      { stage: 'liner', donorId: 'C', plants: 2 },
      { stage: 'liner', candidates: ['A', 'D'], plants: 1 },
      { stage: 'potted', candidates: ['A', 'D'], plants: 2 },
      { stage: 'planted', donorId: 'C', plants: 0 },
    ]);

    expect(liner).toMatchObject({
      donors: 3,
      perDonor: [5, 3, 2],
      plants: 10,
      mixedPlants: 1,
      largest: { donorId: 'A', plants: 5, share: 1 / 2 },
      withMixed: { atLeast: 3, atMost: 4 },
    });
    expect(liner?.effective?.order2).toBeCloseTo(100 / 38, 12);
    expect(liner?.capture).toBeCloseTo(1 - 0.95 ** 6, 14);
    expect(liner?.withMixed.expected).toBeCloseTo(3.5, 12);
    expect(potted).toMatchObject({ donors: 0, plants: 0, mixedPlants: 2, capture: 0, withMixed: { atLeast: 1, atMost: 2 } });
    expect(potted).not.toHaveProperty('effective');
    expect(cutting).toMatchObject({ stage: 'cutting', donors: 0, plants: 0, withMixed: { atLeast: 0, expected: 0, atMost: 0 } });
    expect(planted).toMatchObject({ donors: 0, plants: 0 });
    expect(planted).not.toHaveProperty('largest');
  });

  // Brown AHD, Marshall DR (1995): thirty outbreeding plants for 95 % of alleles of frequency 0.05.
  test('needs the thirty donors of Brown and Marshall 1995, however many plants there are', () => {
    const donors = (n: number, plants: number): StandPlants[] =>
      Array.from({ length: n }, (_, index) => ({ stage: 'potted', donorId: `d${index}`, plants }));

    expect(diversityOfStand(donors(30, 1))[2]?.capture).toBeGreaterThanOrEqual(0.95);
    expect(diversityOfStand(donors(29, 1000))[2]?.capture).toBeLessThan(0.95);
  });

  const row = fc.record({
    stage: fc.constantFrom(...STAGES),
    donorId: fc.constantFrom('A', 'B', 'C', 'D', 'E'),
    plants: fc.integer({ min: 0, max: 30 }),
  });

  test('each stage is what its own plants say, in any order of rows', () => {
    fc.assert(
      fc.property(fc.array(row), (rows) => {
        const stages = diversityOfStand(rows);
        expect(diversityOfStand(rows.toReversed()).map(({ largest }) => largest)).toEqual(stages.map(({ largest }) => largest));
        for (const { stage, donors, plants, effective, withMixed } of stages) {
          const counts = ['A', 'B', 'C', 'D', 'E'].map((id) =>
            rows.filter((r) => r.stage === stage && r.donorId === id).reduce((sum, r) => sum + r.plants, 0),
          );
          expect(plants).toBe(counts.reduce((a, b) => a + b));
          expect(withMixed).toEqual({ atLeast: donors, expected: donors, atMost: donors });
          if (plants === 0) continue;
          expect(donors).toBe(hillNumber(counts, 0));
          expect(effective?.order2).toBeCloseTo(hillNumber(counts, 2), 9);
        }
      }),
    );
  });

  test('finds a negative row that a sum would hide', () => {
    const rows = [-2, 2].map((plants): StandPlants => ({ stage: 'liner', donorId: 'A', plants }));

    expect(() => diversityOfStand(rows)).toThrow(expect.objectContaining({ code: 'diversity/not-a-count' }));
  });

  test.each([
    ['diversity/not-a-count', { stage: 'liner', donorId: 'A', plants: -1 }],
    ['diversity/not-a-count', { stage: 'liner', donorId: 'A', plants: Number.NaN }],
    ['diversity/not-a-count', { stage: 'liner', candidates: ['A'], plants: 0.5 }],
    ['diversity/no-candidates', { stage: 'liner', candidates: [], plants: 5 }],
  ] satisfies Array<[string, StandPlants]>)('answers %s', (code, fault) => {
    expect(() => diversityOfStand([fault])).toThrow(expect.objectContaining({ name: 'DomainError', code }));
  });
});
