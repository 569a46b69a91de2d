'use server';

import { type EntryToSend, writeEntries } from '../../lib/ledger.ts';
import type { Heard, Unheard } from './heard.ts';
import { inWords } from './in-words.ts';
import { onThePhonesClock } from './on-the-phones-clock.ts';

/** Writes a whole round at once, as it was seen; the answer says for each entry what became of it, and what somebody will look at. */
export async function saveRound(programme: string, entries: readonly EntryToSend[], confirm: readonly string[], phoneNow: number): Promise<Heard | Unheard> {
  return inWords(() => writeEntries(programme, onThePhonesClock(entries, phoneNow, Date.now()), confirm, 'outbox'));
}
