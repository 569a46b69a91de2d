import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isKey, keyHash, keyStart, newKey } from './key-format.ts';

const DIGITS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz';

test('a new key has its kind, 178 random bits and a check, and no two are alike', () => {
  const keys = Array.from({ length: 200 }, () => newKey('partner'));

  expect(keys.every((key) => /^spa_[0-9A-Za-z]{36}$/.test(key) && isKey(key))).toBe(true);
  expect(new Set(keys).size).toBe(200);
  expect(newKey('programme')).toMatch(/^spr_/);
});

test('the check is the CRC-32 of what stands before it, in base 62', () => {
  // Worked with Python: zlib.crc32(b'spr_' + b'0' * 30) is 391338516, in these digits 0QU11Y.
  expect(isKey(`spr_${'0'.repeat(30)}0QU11Y`)).toBe(true);
});

test('any one wrong letter is found without asking anybody', () => {
  const key = newKey('programme');
  fc.assert(
    fc.property(fc.integer({ min: 4, max: key.length - 1 }), fc.constantFrom(...DIGITS), (at, letter) => {
      fc.pre(key[at] !== letter);
      return !isKey(key.slice(0, at) + letter + key.slice(at + 1));
    }),
    { numRuns: 500 },
  );
  expect(isKey(`${key} `)).toBe(false);
  expect(isKey(key.slice(0, -1))).toBe(false);
  expect(isKey(key.replace('spr', 'spa'))).toBe(false);
});

test('what is shown of it later is its start, and what is kept says nothing of the rest', () => {
  const key = newKey('partner');
  expect(keyStart(key)).toBe(key.slice(0, 8));
  expect(keyHash(key)).toHaveLength(32);
});
