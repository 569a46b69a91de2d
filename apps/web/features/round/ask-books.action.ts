'use server';

import { type EntryToSend, previewEntries } from '../../lib/ledger.ts';
import type { Heard, Unheard } from './heard.ts';
import { inWords } from './in-words.ts';

/** What the books would make of a round. Nothing is written. */
export async function askBooks(programme: string, entries: readonly EntryToSend[], confirm: readonly string[]): Promise<Heard | Unheard> {
  return inWords(() => previewEntries(programme, entries, confirm));
}
