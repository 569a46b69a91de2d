import { Id } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { stickingIdOf } from './sticking-id.ts';

const bundle = '01a2126b-90fa-7f15-93f3-4af80d78cb77';

test('cuttings of one bundle, day and recipe are one sticking, whichever tray they go into', () => {
  expect(stickingIdOf(bundle, '2026-11-25', 'r1')).toBe(stickingIdOf(bundle, '2026-11-25', 'r1'));
});

test('another day, another recipe or none is another sticking', () => {
  const ids = [stickingIdOf(bundle, '2026-11-25', 'r1'), stickingIdOf(bundle, '2026-11-26', 'r1'), stickingIdOf(bundle, '2026-11-25', 'r2'), stickingIdOf(bundle, '2026-11-25', undefined)];
  expect(new Set(ids).size).toBe(4);
});

test('the API takes it as an id', () => {
  expect(Id.safeParse(stickingIdOf(bundle, '2026-11-25', 'r1')).success).toBe(true);
});
