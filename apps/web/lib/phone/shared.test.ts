import { expect, test } from 'vitest';
import { IDLE_MS, isIdle, keepTouch, lastTouch } from './shared.ts';

const NOW = Date.UTC(2026, 2, 1, 10);

test.each([
  ['nobody ever touched it', undefined, true],
  ['a moment ago', NOW - 1, false],
  ['just under five minutes ago', NOW - IDLE_MS + 1, false],
  ['five minutes ago', NOW - IDLE_MS, true],
  ['in a future that a wrong clock told of', NOW + 86_400_000, true],
])('%s', (_, touched, is) => expect(isIdle(touched, NOW)).toBe(is));

test('a touch is kept as a moment, and what is no moment is none', () => {
  const kept = new Map<string, string>();
  const storage = { getItem: (key: string) => kept.get(key) ?? null, setItem: (key: string, value: string) => void kept.set(key, value) };
  expect(lastTouch(storage)).toBeUndefined();
  keepTouch(storage, NOW);
  expect(lastTouch(storage)).toBe(NOW);
  expect(lastTouch({ getItem: () => 'never' })).toBeUndefined();
});
