import { hash, verify } from '@node-rs/argon2';
import { DomainError } from '@sprigline/domain';
import { availableParallelism } from 'node:os';
import { refuseKnown } from './known-passwords.ts';

/** The library's `Algorithm.Argon2id`, an enum that this compiler setting cannot read. */
const ARGON2ID = 2;

/**
 * Argon2id with 64 MiB and three passes: about 70 ms here, and above what OWASP
 * ASVS 5.0 (appendix C) and the OWASP password storage sheet ask for (19 MiB, two).
 */
const COST = { algorithm: ARGON2ID, memoryCost: 65_536, timeCost: 3, parallelism: 1 } as const;

/** Each hash takes its 64 MiB, so only so many run at once, and only so many wait. */
const AT_ONCE = availableParallelism();
const WAITING_AT_MOST = 64;

let running = 0;
const waiting: (() => void)[] = [];

/** @throws DomainError `sign-in/unfit-password` for one that leaked, `sign-in/busy` when too many passwords are being checked */
export async function hashPassword(password: string): Promise<string> {
  refuseKnown(password);
  return inTurn(() => hash(password.normalize('NFC'), COST));
}

/** @throws DomainError `sign-in/busy` when too many passwords are being checked */
export const isPassword = (stored: string, password: string): Promise<boolean> => inTurn(() => verify(stored, password.normalize('NFC')));

async function inTurn<T>(work: () => Promise<T>): Promise<T> {
  if (waiting.length >= WAITING_AT_MOST) throw new DomainError('sign-in/busy', 'too many people sign in at this moment: wait a little, then try again');
  if (running >= AT_ONCE) await new Promise<void>((turn) => waiting.push(turn));
  else running += 1;
  try {
    return await work();
  } finally {
    // The place goes straight to the next in line, so that nobody slips in between.
    const next = waiting.shift();
    if (next) next();
    else running -= 1;
  }
}
