import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chao1 } from './chao1.ts';
import { donorsPlanted } from './donors-planted.ts';
import { heterozygosityKept } from './heterozygosity-kept.ts';
import { hillNumber } from './hill-number.ts';
import { COANCESTRY, statusNumber } from './status-number.ts';

describe('the status number', () => {
  const sibs = (theta: number, n: number) => statusNumber(Array.from({ length: n }, () => 1), () => theta).status;
  test.each([['two half-sibs', COANCESTRY.halfSibs, 2, 1.6], ['two full sibs', COANCESTRY.fullSibs, 2, 4 / 3], ['ten full sibs', COANCESTRY.fullSibs, 10, 20 / 11], ['a hundred half-sibs', COANCESTRY.halfSibs, 100, 400 / 103]])('of %s, worked by hand', (_, theta, n, status) => expect(sibs(theta, n)).toBeCloseTo(status, 10));
  // Kang KS, Lai HL, Lindgren D (2002) Silvae Genetica 51:65-72: a half-sib family comes close to 4.
  test('of an endless half-sib family comes to 4, of copies to 1', () => {
    expect(sibs(COANCESTRY.halfSibs, 3000)).toBeCloseTo(4, 1);
    expect(sibs(COANCESTRY.copies, 20)).toBeCloseTo(1, 10);
  });
  test('of unrelated trees is the Hill number of order 2; relatives lower it', () => {
    fc.assert(fc.property(fc.array(fc.nat(50), { minLength: 2, maxLength: 12 }).filter((plants) => plants.some((n) => n > 0)), (plants) => {
      const alone = statusNumber(plants, () => 0);
      expect(alone.status).toBeCloseTo(hillNumber(plants, 2), 8);
      expect(statusNumber(plants, () => COANCESTRY.halfSibs).status).toBeLessThanOrEqual(alone.status + 1e-9);
      expect(alone.kept).toBeCloseTo(1 - alone.coancestry, 12);
    }));
  });
  test('no coancestry of more than a copy', () => expect(() => statusNumber([1, 1], () => 0.6)).toThrow(expect.objectContaining({ code: 'diversity/not-a-coancestry' })));
});

describe('Chao1', () => {
  // The spider counts of Chao A et al. 2014, Ecol. Monogr. 84:45-67: girdled 12 found once, 4 twice; logged 14 once, 4 twice. By hand 26 + 167/168 x 144/8.
  test('spider counts', () => {
    const girdled = [46, 22, 17, 15, 15, 9, 8, 6, 6, 4, 2, 2, 2, 2, ...Array.from({ length: 12 }, () => 1)];
    expect(chao1(girdled)).toEqual({ seen: 26, atLeast: expect.closeTo(26 + ((167 / 168) * 144) / 8, 10) });
  });
  test('by hand, where none was found twice', () => expect(chao1([1, 1, 1, 5])).toEqual({ seen: 4, atLeast: expect.closeTo(4 + (7 / 8) * 3, 12) }));
  test('never less than was seen; a donor without plants changes nothing', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 20 }), (plants) => {
      expect(chao1(plants).atLeast).toBeGreaterThanOrEqual(plants.length);
      expect(chao1([...plants, 0])).toEqual(chao1(plants));
    }));
  });
});

describe('heterozygosity', () => {
  // 1 - 1/(2N) for one generation: ten unrelated trees keep 95 %; (1 - 1/100)^50 for 50 breeding trees, worked with a desk calculator.
  test.each([[10, 1, 0.95], [25, 1, 0.98], [50, 10, 0.9044], [50, 50, 0.605], [500, 100, 0.9048], [1000, 5, 0.9975]])('of %d after %d generations', (size, generations, kept) => expect(Math.abs(heterozygosityKept(size, generations) - kept)).toBeLessThanOrEqual(0.00005));
  test.each([[0.4, 1], [10, -1], [Number.NaN, 1]])('of %d after %d is refused', (size, generations) => expect(() => heterozygosityKept(size, generations)).toThrow());
});

describe('donor trees that reach the site', () => {
  test('worked by hand', () => {
    const half = { mean: 0.5, likeness: 0 };
    expect(donorsPlanted([{ lots: [{ plants: 2, chance: half }] }, { lots: [{ plants: 1, chance: half }, { plants: 1, chance: { mean: 0.75, likeness: 0 } }] }, { lots: [] }])).toBeCloseTo(3 / 4 + 7 / 8, 12);
  });
  test('never more than there are, nor fewer for more plants', () => {
    fc.assert(fc.property(fc.array(fc.nat(30), { maxLength: 8 }), fc.double({ min: 0, max: 1, noNaN: true }), (plants, mean) => {
      const of = (more: number) => donorsPlanted(plants.map((n) => ({ lots: [{ plants: n + more, chance: { mean, likeness: 0.2 } }] })));
      expect(of(0)).toBeLessThanOrEqual(plants.length + 1e-9);
      expect(of(1)).toBeGreaterThanOrEqual(of(0) - 1e-9);
    }));
  });
});
