'use server';

import { type EntryToSend, writeEntries } from '../../lib/ledger.ts';
import type { Heard, Unheard } from './heard.ts';
import { inWords } from './in-words.ts';

/** Writes a whole round at once; the answer says for each entry what became of it. */
export async function saveRound(programme: string, entries: readonly EntryToSend[], confirm: readonly string[]): Promise<Heard | Unheard> {
  return inWords(() => writeEntries(programme, entries, confirm));
}
