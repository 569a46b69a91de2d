import { PHOTO_SIDE } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { fittedSize } from './fitted-size.ts';
import { LONGEST_SIDE } from './shrink-picture.ts';

test.each([
  ['wide', 4_000, 3_000, 2_048, 1_536],
  ['tall', 3_000, 4_000, 1_536, 2_048],
  ['square', 5_000, 5_000, 2_048, 2_048],
  ['small already', 640, 480, 640, 480],
  ['just as large', 2_048, 1_000, 2_048, 1_000],
  ['a strip keeps a pixel', 20_000, 1, 2_048, 1],
  ['rounded to whole pixels', 4_096, 1_001, 2_048, 501],
])('%s', (_, width, height, ...fitted) => {
  expect(Object.values(fittedSize({ width, height }, 2_048))).toEqual(fitted);
});

test('devices make photos just as large as the API keeps them', () => {
  expect(LONGEST_SIDE).toBe(PHOTO_SIDE);
});
