import type { Dead, Numbers } from './answer.ts';
import type { Look } from './stop.ts';

/**
 * What somebody taps in of one batch before they tell it. Kept on the phone for as long as a round
 * lasts, so that a reload, or somebody else's turn on a shared tablet, loses none of it.
 */
export interface Typing {
  readonly look: Look;
  readonly numbers: Numbers;
  readonly dead: Dead;
}

/** Later than that it is not what somebody is just counting. Milliseconds. */
const KEPT_MS = 4 * 60 * 60 * 1000;

/** @param round key of the round's draft, which names programme, place and person */
export const typingKey = (round: string, batchId: string): string => `sprigline/typing/1/${round}/${batchId}`;

export function readTyping(storage: Pick<Storage, 'getItem'>, key: string, now: number): Typing | undefined {
  try {
    const { at, ...typing } = JSON.parse(storage.getItem(key) ?? '{}') as Partial<Typing> & { at?: number };
    return at !== undefined && at <= now && now - at < KEPT_MS && typing.look && typing.numbers && typing.dead ? { look: typing.look, numbers: typing.numbers, dead: typing.dead } : undefined;
  } catch {
    return undefined;
  }
}

/** @param typing nothing: it was told, or rubbed out */
export function keepTyping(storage: Pick<Storage, 'setItem' | 'removeItem'>, key: string, typing: Typing | undefined, now: number): void {
  try {
    if (typing) storage.setItem(key, JSON.stringify({ ...typing, at: now }));
    else storage.removeItem(key);
  } catch {
    // Full: it is on the screen, as it was before.
  }
}
