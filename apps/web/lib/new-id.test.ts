import { expect, test } from 'vitest';
import { Id } from '@sprigline/contract';
import { newId } from './new-id.ts';

test('makes ids that the API takes, and no two alike', () => {
  const ids = Array.from({ length: 1_000 }, newId);
  for (const id of ids) expect(Id.safeParse(id).success).toBe(true);
  expect(new Set(ids).size).toBe(1_000);
});

test('begins with the moment it was made', () => {
  const before = Date.now();
  const moment = Number.parseInt(newId().replaceAll('-', '').slice(0, 12), 16);
  expect(moment).toBeGreaterThanOrEqual(before);
  expect(moment).toBeLessThanOrEqual(Date.now());
});
