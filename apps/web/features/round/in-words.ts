import 'server-only';
import type { Previewed, WrittenEntry } from '@sprigline/contract';
import { Refused } from '../../lib/refused.ts';
import { withoutFacts } from '../../lib/ledger.ts';
import { wordsFor } from '../../lib/words-for.ts';
import type { Heard, Unheard } from './heard.ts';

/** Asks, and puts every refusal into words; anything that is not a refusal is thrown. */
export async function inWords(ask: () => Promise<{ entries: readonly WrittenEntry[]; batches?: Previewed['batches'] }>): Promise<Heard | Unheard> {
  try {
    const { entries, batches = [] } = await ask();
    return { batches, entries: await Promise.all(entries.map(async (entry) => ({ ...entry, words: entry.problem && (await wordsFor(withoutFacts(entry.problem))) }))) };
  } catch (error) {
    if (error instanceof Refused) return { refused: await wordsFor(error.problem) };
    throw error;
  }
}
