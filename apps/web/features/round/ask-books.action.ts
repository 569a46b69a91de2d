'use server';

import { type EntryToSend, previewEntries } from '../../lib/ledger.ts';
import type { Heard, Unheard } from './heard.ts';
import { inWords } from './in-words.ts';
import { onThePhonesClock } from './on-the-phones-clock.ts';

/** What the books would make of a round. Nothing is written. */
export async function askBooks(programme: string, entries: readonly EntryToSend[], confirm: readonly string[], phoneNow: number): Promise<Heard | Unheard> {
  return inWords(() => previewEntries(programme, onThePhonesClock(entries, phoneNow, Date.now()), confirm, 'outbox'));
}
