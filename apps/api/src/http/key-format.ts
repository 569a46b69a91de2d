import { createHash, randomInt } from 'node:crypto';
import { crc32 } from 'node:zlib';

/** Begins a key of a programme, or of a partner; scanners for leaked secrets can look for it. */
export const KEY_KINDS = { programme: 'spr', partner: 'spa' } as const;

const DIGITS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz';
/** 62^30 > 2^178. */
const RANDOM_DIGITS = 30;
/** 62^6 > 2^32. */
const CHECK_DIGITS = 6;
const SHAPE = new RegExp(`^(?:${Object.values(KEY_KINDS).join('|')})_[${DIGITS}]{${RANDOM_DIGITS + CHECK_DIGITS}}$`);
/** Enough to tell one's own keys apart, and of no help to anybody else. */
const SHOWN_DIGITS = 8;

/** A new key: kind, underscore, 178 random bits and the check of all that stands before it, both in base 62. */
export function newKey(kind: keyof typeof KEY_KINDS): string {
  const random = Array.from({ length: RANDOM_DIGITS }, () => DIGITS[randomInt(DIGITS.length)]).join('');
  const body = `${KEY_KINDS[kind]}_${random}`;
  return body + checkOf(body);
}

/** Whether it could be a key at all: one wrong letter is found without asking the database. */
export const isKey = (text: string): boolean => SHAPE.test(text) && checkOf(text.slice(0, -CHECK_DIGITS)) === text.slice(-CHECK_DIGITS);

/** What the database keeps of it: 178 random bits need no stretching (OWASP ASVS 5.0, 6.5.2). */
export const keyHash = (key: string): Buffer => createHash('sha256').update(key).digest();

export const keyStart = (key: string): string => key.slice(0, SHOWN_DIGITS);

function checkOf(body: string): string {
  let rest = crc32(body);
  let digits = '';
  for (let digit = 0; digit < CHECK_DIGITS; digit += 1) {
    digits = (DIGITS[rest % DIGITS.length] ?? '') + digits;
    rest = Math.floor(rest / DIGITS.length);
  }
  return digits;
}
