import { describe, expect, test } from 'vitest';
import { dailyLight, dilution, mediumLitres, ML_PER_CUBIC_INCH, MM_PER_FOOT, ppmOfPercent, traysOnBench } from './bench-arithmetic.ts';

describe('at the bench', () => {
  test('30 mL of 10,000 ppm and 70 mL of diluent make 100 mL of 3,000 ppm', () => expect(dilution(10_000, 3_000, 100)).toEqual({ stockMl: 30, diluentMl: 70 }));
  test('0.8 % is 8,000 ppm', () => expect(ppmOfPercent(0.8)).toBe(8_000));
  test('nothing is made stronger, and nothing of no size', () => {
    expect(() => dilution(3_000, 8_000, 100)).toThrow(expect.objectContaining({ code: 'bench/stronger-than-stock' }));
    expect(() => dilution(0, 0, 100)).toThrow(expect.objectContaining({ code: 'bench/not-a-size' }));
    expect(() => mediumLitres(1, 2.5)).toThrow(expect.objectContaining({ code: 'survival/not-a-count' }));
    expect(() => dailyLight(100, 25)).toThrow();
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
