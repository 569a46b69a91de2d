import { expect, test } from 'vitest';
import { keepTyping, readTyping, typingKey } from './typing.ts';

const NOW = Date.UTC(2026, 2, 1, 10);
const typing = { look: 'tug', numbers: { alive: 12 }, dead: { brown: 1 } } as const;

function storage() {
  const kept = new Map<string, string>();
  return { getItem: (key: string) => kept.get(key) ?? null, setItem: (key: string, value: string) => void kept.set(key, value), removeItem: (key: string) => void kept.delete(key) };
}

test('what was being tapped in comes back to the same person at the same batch, and to no other', () => {
  const phone = storage();
  keepTyping(phone, typingKey('harrowdale/bench/ann', 'tray'), typing, NOW);
  expect(readTyping(phone, typingKey('harrowdale/bench/ann', 'tray'), NOW + 60_000)).toEqual(typing);
  expect(readTyping(phone, typingKey('harrowdale/bench/ben', 'tray'), NOW)).toBeUndefined();
  expect(readTyping(phone, typingKey('harrowdale/bench/ann', 'other'), NOW)).toBeUndefined();
});

test('it is gone once it is told, and after four hours: no count is carried into another day', () => {
  const phone = storage();
  keepTyping(phone, 'key', typing, NOW);
  expect(readTyping(phone, 'key', NOW + 4 * 3_600_000)).toBeUndefined();
  keepTyping(phone, 'key', undefined, NOW);
  expect(readTyping(phone, 'key', NOW)).toBeUndefined();
});

test('what cannot be read, and a phone that is full, stop nobody', () => {
  expect(readTyping({ getItem: () => '{' }, 'key', NOW)).toBeUndefined();
  expect(() => keepTyping({ setItem: () => { throw new DOMException('full', 'QuotaExceededError'); }, removeItem: () => undefined }, 'key', typing, NOW)).not.toThrow();
});
