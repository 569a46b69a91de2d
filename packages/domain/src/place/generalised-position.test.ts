import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { generalisedPosition } from './generalised-position.ts';
import { strictestSensitivity } from './strictest-sensitivity.ts';

// Half-diagonals worked with the sphere of radius 6371.0088 km, whole metres.
const HALF_DIAGONALS = [
  { latitude: 0, class2: 7863, class3: 786, class4: 79 },
  { latitude: 36, class2: 7151, class3: 715, class4: 72 },
  { latitude: 40, class2: 7004, class3: 700, class4: 70 },
  { latitude: 45, class2: 6809, class3: 681, class4: 68 },
];
const MOST_FOR_HALF_A_METRE = 0.5;

describe('generalisedPosition', () => {
  // 40.015678, -105.279123 rounded by hand to the grids of Chapman 2020.
  test.each([
    { sensitivity: 4, latitude: 40.016, longitude: -105.279, degrees: 0.001 },
    { sensitivity: 3, latitude: 40.02, longitude: -105.28, degrees: 0.01 },
    { sensitivity: 2, latitude: 40, longitude: -105.3, degrees: 0.1 },
    { sensitivity: 0, latitude: 40.016, longitude: -105.279, degrees: 0.001 },
  ])('rounds to $degrees degrees for class $sensitivity', ({ sensitivity, ...cell }) => {
    expect(generalisedPosition(40.015678, -105.279123, sensitivity)).toMatchObject(cell);
  });

  test('withholds class 1', () => {
    expect(generalisedPosition(40.015678, -105.279123, 1)).toBeUndefined();
  });

  test.each(HALF_DIAGONALS)('says how far off the place may be at latitude $latitude', ({ latitude, class2, class3, class4 }) => {
    for (const [sensitivity, metres] of [[2, class2], [3, class3], [4, class4]] as const) {
      const cell = generalisedPosition(latitude, 10, sensitivity);

      expect(Math.abs((cell?.halfDiagonalM ?? 0) - metres)).toBeLessThanOrEqual(MOST_FOR_HALF_A_METRE);
    }
  });

  test('rounds halves away from zero, whatever the binary fraction says', () => {
    // 1.005 is a little less than that in binary.
    expect(generalisedPosition(1.005, -1.005, 3)).toMatchObject({ latitude: 1.01, longitude: -1.01 });
  });

  test('answers 0, not -0, just south of the equator', () => {
    expect(Object.is(generalisedPosition(-0.04, 0, 2)?.latitude, 0)).toBe(true);
  });

  const position = fc.tuple(fc.integer({ min: -90_000_000, max: 90_000_000 }), fc.integer({ min: -180_000_000, max: 180_000_000 }));

  test('the true place lies in the cell, and rounding the cell again moves nothing', () => {
    fc.assert(
      fc.property(position, fc.constantFrom(0, 2, 3, 4), ([south, west], sensitivity) => {
        const [latitude, longitude] = [south / 1e6, west / 1e6];
        const cell = generalisedPosition(latitude, longitude, sensitivity);
        if (!cell) throw new Error('only class 1 is withheld');

        expect(Math.abs(cell.latitude - latitude)).toBeLessThanOrEqual(cell.degrees / 2 + 1e-9);
        expect(Math.abs(cell.longitude - longitude)).toBeLessThanOrEqual(cell.degrees / 2 + 1e-9);
        expect(generalisedPosition(cell.latitude, cell.longitude, sensitivity)).toEqual(cell);
      }),
    );
  });

  test.each([
    ['place/not-on-earth', 90.1, 0, 2],
    ['place/not-on-earth', 0, -180.1, 2],
    ['place/not-on-earth', Number.NaN, 0, 2],
    ['place/no-such-class', 0, 0, 5],
    ['place/no-such-class', 0, 0, 2.5],
  ])('answers %s for %d, %d in class %d', (code, latitude, longitude, sensitivity) => {
    expect(() => generalisedPosition(latitude, longitude, sensitivity)).toThrow(expect.objectContaining({ code }));
  });
});

describe('strictestSensitivity', () => {
  test.each([
    [[], 0],
    [[0, 0], 0],
    [[0, 4], 4],
    [[4, 2, 0], 2],
    [[3, 1, 2], 1],
  ])('of %j is %d', (classes, strictest) => {
    expect(strictestSensitivity(classes)).toBe(strictest);
  });
});
