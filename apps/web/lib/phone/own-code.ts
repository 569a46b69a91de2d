import type { Store } from './store.ts';

/**
 * A code of one's own on a shared device, so that nobody logs under another name by a slip. It lies
 * only here, as a hash that is slow to guess (PBKDF2 with SHA-256, 600,000 rounds: OWASP's figure of
 * 2023). It guards names and no data: whoever holds the device can read what is on it.
 */
interface OwnCode {
  readonly salt: Uint8Array<ArrayBuffer>;
  readonly hash: Uint8Array<ArrayBuffer>;
  readonly rounds: number;
  /** Wrong ones since the last right one or the last wait. */
  readonly wrong: number;
  /** Milliseconds since 1970; nothing is tried before. */
  readonly waitUntil: number;
}

const ROUNDS = 600_000;
const TRIES = 5;
export const WAIT_MS = 60_000;

const PREFIX = 'own-code/';
const keyOf = (personId: string): string => `${PREFIX}${personId}`;

/** @returns whether it may be one: 4 to 8 digits */
export const isCode = (text: string): boolean => /^\d{4,8}$/.test(text);

/** Browsers hash only on a page that came by HTTPS, or from this machine. */
export const canHaveCodes = (): boolean => typeof crypto !== 'undefined' && crypto.subtle !== undefined;

/** Ids of those who have one here. */
export async function peopleWithCodes(store: Store): Promise<ReadonlySet<string>> {
  const keys = await store.getAllKeys('settings', IDBKeyRange.bound(PREFIX, `${PREFIX}\uffff`));
  return new Set(keys.map((key) => key.slice(PREFIX.length)));
}

/** @param code 4 to 8 digits; asked for by `isCode` before */
export async function setCode(store: Store, personId: string, code: string, rounds = ROUNDS): Promise<void> {
  if (!isCode(code)) throw new RangeError('a code has 4 to 8 digits');
  const salt = crypto.getRandomValues(new Uint8Array(16));
  const made: OwnCode = { salt, hash: await hashed(code, salt, rounds), rounds, wrong: 0, waitUntil: 0 };
  await store.put('settings', made, keyOf(personId));
}

export const dropCode = (store: Store, personId: string): Promise<void> => store.delete('settings', keyOf(personId));

export type Tried = { readonly is: 'right' } | { readonly is: 'wrong'; readonly left: number } | { readonly is: 'wait'; readonly seconds: number };

/** Tries a code. After five wrong ones a minute must pass, through closing and opening again. Who has none is let in. */
export async function tryCode(store: Store, personId: string, code: string, now: number): Promise<Tried> {
  const kept = (await store.get('settings', keyOf(personId))) as OwnCode | undefined;
  if (!kept) return { is: 'right' };
  // A clock that was set back must not shut anybody out for longer.
  const waitMs = Math.min(kept.waitUntil - now, WAIT_MS);
  if (waitMs > 0) return { is: 'wait', seconds: Math.ceil(waitMs / 1000) };
  const isRight = isCode(code) && sameBytes(await hashed(code, kept.salt, kept.rounds), kept.hash);
  const wrong = isRight ? 0 : kept.wrong + 1;
  const mustWait = wrong >= TRIES;
  await store.put('settings', { ...kept, wrong: mustWait ? 0 : wrong, waitUntil: mustWait ? now + WAIT_MS : 0 }, keyOf(personId));
  if (isRight) return { is: 'right' };
  return mustWait ? { is: 'wait', seconds: WAIT_MS / 1000 } : { is: 'wrong', left: TRIES - wrong };
}

async function hashed(code: string, salt: Uint8Array<ArrayBuffer>, iterations: number): Promise<Uint8Array<ArrayBuffer>> {
  const key = await crypto.subtle.importKey('raw', new TextEncoder().encode(code), 'PBKDF2', false, ['deriveBits']);
  return new Uint8Array(await crypto.subtle.deriveBits({ name: 'PBKDF2', hash: 'SHA-256', salt, iterations }, key, 256));
}

function sameBytes(one: Uint8Array, other: Uint8Array): boolean {
  return one.length === other.length && one.every((byte, at) => byte === other[at]);
}
