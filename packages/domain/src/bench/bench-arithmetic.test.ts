import { describe, expect, test } from 'vitest';
import { dailyLight, dilution, mediumLitres, ML_PER_CUBIC_INCH, MM_PER_FOOT, ppmOfPercent, traysOnBench } from './bench-arithmetic.ts';

describe('at the bench', () => {
  test('30 mL of 10,000 ppm and 70 mL of diluent make 100 mL of 3,000 ppm', () => expect(dilution(10_000, 3_000, 100)).toEqual({ stockMl: 30, diluentMl: 70 }));
  test('0.8 % is 8,000 ppm', () => expect(ppmOfPercent(0.8)).toBe(8_000));
  test('nothing is made stronger, and nothing of no size', () => {
    expect(() => dilution(3_000, 8_000, 100)).toThrow(expect.objectContaining({ code: 'bench/stronger-than-stock' }));
    expect(() => dilution(0, 0, 100)).toThrow(expect.objectContaining({ code: 'bench/not-a-size' }));
    expect(() => mediumLitres(1, 2.5)).toThrow(expect.objectContaining({ code: 'survival/not-a-count' }));
  });

  const NO_SIZE = expect.objectContaining({ code: 'bench/not-a-size' });
  test('as strong as the stock is the stock itself', () => expect(dilution(3_000, 3_000, 50)).toEqual({ stockMl: 50, diluentMl: 0 }));

  test('a strength is nothing at least and all at most', () => {
    expect([0, 100].map(ppmOfPercent)).toEqual([0, 1_000_000]);
    for (const percent of [-0.1, 100.1, Number.NaN]) expect(() => ppmOfPercent(percent)).toThrow(NO_SIZE);
  });

  test('a day has no more than 24 hours, and light is not less than none', () => {
    expect([dailyLight(0, 12), dailyLight(100, 0)]).toEqual([0, 0]);
    // A lamp of 500 umol that is never put out: 500 x 86,400 s.
    expect(dailyLight(500, 24)).toBeCloseTo(43.2, 12);
    for (const [ppfd, hours] of [[-1, 12], [100, -1], [100, 24.1], [Number.POSITIVE_INFINITY, 12], [1e100, 12], [Number.NaN, 12], [100, Number.NaN]] as const) expect(() => dailyLight(ppfd, hours)).toThrow(NO_SIZE);
  });

  test('medium: nothing on top, no containers, and what is no share', () => {
    expect(mediumLitres(2, 5, 0)).toBe(10);
    expect(mediumLitres(2, 0)).toBe(0);
    expect(mediumLitres(1, 100, 9.99)).toBeCloseTo(1099, 10);
    for (const extra of [-0.01, 10, Number.NaN]) expect(() => mediumLitres(2, 5, extra)).toThrow(expect.objectContaining({ code: 'numbers/not-a-share' }));
    for (const litres of [0, -1, 1e100, Number.NaN]) expect(() => mediumLitres(litres, 5)).toThrow(NO_SIZE);
  });

  test('a tray wider than the bench does not fit, and more trays than can be counted are refused, whichever way round they stand', () => {
    expect(traysOnBench({ width: 100, length: 600 }, { width: 200, length: 300 })).toEqual({ trays: 0, isTurned: false });
    expect(traysOnBench({ width: 100, length: 600 }, { width: 200, length: 100 })).toEqual({ trays: 3, isTurned: true });
    expect(() => traysOnBench({ width: 1e9, length: 1e9 }, { width: 1e-3, length: 1e-3 })).toThrow(NO_SIZE);
    // Along 5 x 10^21 of them and turned none; then turned so many and along none.
    expect(() => traysOnBench({ width: 1, length: 1e11 }, { width: 1e-11, length: 2 })).toThrow(NO_SIZE);
    expect(() => traysOnBench({ width: 1, length: 1e11 }, { width: 2, length: 1e-11 })).toThrow(NO_SIZE);
  });

  // Worked by hand on a bench of 1200 x 6000 mm: 4 x 11 along, 2 x 21 turned; pots of 100, 125, 150 mm.
  test.each([[280, 540, 44, false], [540, 280, 44, true], [100, 100, 720, false], [125, 125, 432, false], [150, 150, 320, false]])('trays of %d x %d', (width, length, trays, isTurned) => expect(traysOnBench({ width: 1200, length: 6000 }, { width, length })).toEqual({ trays, isTurned }));
  test('100 umol for 14 hours are 5.04 mol', () => expect(dailyLight(100, 14)).toBeCloseTo(5.04, 12));
  test('forty pots of 0.8 L with a tenth more', () => expect(mediumLitres(0.8, 40)).toBeCloseTo(35.2, 12));
  // NIST Special Publication 811: exact factors; the feet are those of Rehfeldt 1988, who prints 300, 410, 560 for 90, 125, 200 m.
  test('units', () => {
    expect([3, 4, 7, 10, 40].map((inches) => Math.round(inches * ML_PER_CUBIC_INCH * 10) / 10)).toEqual([49.2, 65.5, 114.7, 163.9, 655.5]);
    expect([90, 125, 200].map((metres) => Math.round((metres * 1000) / MM_PER_FOOT))).toEqual([295, 410, 656]);
  });
});
