import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plantedSurvival, type PlantedTrees } from './planted-survival.ts';

const trees = (plotId: string, planted: number, alive: number, more: Partial<PlantedTrees> & { notFound?: number } = {}): PlantedTrees => {
  const { notFound = 0, ...rest } = more;
  return { plotId, planted, dead: planted - alive - notFound, givenOut: 0, look: { alive, notFound }, ...rest };
};

describe('plantedSurvival', () => {
  // Five plots of ten, alive 8, 10, 6, 9, 7, worked out apart with R 4 from Cochran's ratio estimator and from Wilson 1927:
  // rate .80; by plot .6037 to .9963 (t on 4); plants by themselves .6696 to .8876.
  test('agrees with what R gives for five plots of ten', () => {
    const { rates, byUnit, alive, dead } = plantedSurvival([8, 10, 6, 9, 7].map((n, at) => trees(`P${at}`, 10, n)));
    expect({ alive, dead, low: rates?.low, high: rates?.high }).toEqual({ alive: 40, dead: 10, low: 0.8, high: 0.8 });
    expect(rates?.wilsonLow.lower).toBeCloseTo(0.6696, 4);
    expect(rates?.wilsonLow.upper).toBeCloseTo(0.8876, 4);
    expect(byUnit).toMatchObject({ unit: 'plot', units: 5 });
    expect(byUnit?.lower).toBeCloseTo(0.6037, 4);
    expect(byUnit?.upper).toBeCloseTo(0.9963, 4);
  });

  test('by hand: 20 planted, 12 alive, 3 dead, 4 not found, 1 left out of the look; 6 more never looked at', () => {
    const found = plantedSurvival([
      { plotId: 'A', planted: 20, dead: 3, givenOut: 0, look: { alive: 12, notFound: 4 } },
      { plotId: 'B', planted: 6, dead: 1, givenOut: 0 },
    ]);
    expect(found).toMatchObject({ planted: 26, alive: 12, dead: 3, notFound: 4, notLooked: 1, notChecked: 6, rates: { low: 12 / 19, high: 12 / 15 } });
    expect(found.byUnit).toBeUndefined();
  });

  test('a large plot counts for what it is: never the average of percentages', () => {
    // 90 of 100 and 0 of 10 are 90 of 110, and not 45 %.
    expect(plantedSurvival([trees('A', 100, 90), trees('B', 10, 0)]).rates?.low).toBe(90 / 110);
  });

  test('where plots are few, donor trees are what was sampled', () => {
    const list = [8, 10, 6, 9, 7].map((n, at) => trees('one plot', 10, n, { donorId: `D${at}` }));
    expect(plantedSurvival(list).byUnit).toMatchObject({ unit: 'donor', units: 5, lower: expect.closeTo(0.6037, 4) });
    expect(plantedSurvival(list.map(({ donorId: _, ...one }) => one)).byUnit).toBeUndefined();
  });

  test('nobody has looked: no rate, and nothing called alive', () => {
    const found = plantedSurvival([{ plotId: 'A', planted: 9, dead: 0, givenOut: 2 }]);
    expect(found).toMatchObject({ planted: 9, notChecked: 7, givenOut: 2, alive: 0 });
    expect(found.rates).toBeUndefined();
  });

  test('every planted tree is in one place, and not found only lowers the rate', () => {
    const drawn = fc.tuple(fc.nat(40), fc.nat(40), fc.nat(40), fc.nat(40), fc.nat(40), fc.boolean(), fc.nat(5)).map(([alive, dead, notFound, rest, givenOut, isLooked, plot]): PlantedTrees => ({
      plotId: `P${plot}`, planted: alive + dead + notFound + rest + givenOut, dead, givenOut, look: isLooked ? { alive, notFound } : undefined,
    }));
    fc.assert(fc.property(fc.array(drawn, { maxLength: 8 }), (list) => {
      const { planted, givenOut, notChecked, notLooked, alive, dead, notFound, rates } = plantedSurvival(list);
      expect(givenOut + notChecked + notLooked + alive + dead + notFound).toBe(planted);
      expect(notLooked).toBeGreaterThanOrEqual(0);
      if (rates?.high !== undefined) expect(rates.low).toBeLessThanOrEqual(rates.high);
    }));
  });

  test.each([{ planted: 5, dead: 6 }, { planted: -1 }, { planted: 2.5 }, { planted: 5, look: { alive: 4, notFound: 2 } }])('refuses %o', (wrong) => {
    expect(() => plantedSurvival([{ plotId: 'A', dead: 0, givenOut: 0, ...wrong }])).toThrow(expect.objectContaining({ code: 'survival/not-a-count' }));
  });
});
