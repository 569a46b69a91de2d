import 'server-only';
import { type EntryProblem, Written, type WrittenEntry } from '@sprigline/contract';
import { ask } from './api.ts';
import type { UncheckedEntry } from './entry-said.ts';
import type { EntryToSend } from './entry-to-send.ts';
import { Refused, RefusedPart } from './refused.ts';
import { apiOf } from './workplace.ts';

/**
 * Writes entries, each for itself: a refused one does not keep the others out.
 *
 * @param confirm ids of entries to write although they look like a slip
 * @throws Refused when the request as a whole was not taken
 */
export async function writeEntries(programme: string, entries: readonly (EntryToSend | UncheckedEntry)[], confirm: readonly string[] = []): Promise<Written> {
  return (await ask(apiOf(programme, 'entries'), Written, { method: 'POST', body: { door: 'desk', entries, confirm } })).body;
}

/**
 * Writes one entry out of a form.
 *
 * @throws Refused with the problem of that entry
 */
export async function writeEntry(programme: string, entry: UncheckedEntry, isConfirmed: boolean): Promise<void> {
  const { entries } = await writeEntries(programme, [entry], isConfirmed ? [entry.id] : []);
  refuseFirst(entries);
}

/**
 * Writes the entries of one act: all of them, or none.
 *
 * @throws Refused with the problem of the entry that was refused, and `at`, its place among those sent
 */
export async function writeTogether(programme: string, entries: readonly UncheckedEntry[], isConfirmed: boolean): Promise<void> {
  const confirm = isConfirmed ? entries.map(({ id }) => id) : [];
  const { body } = await ask(apiOf(programme, 'entries'), Written, { method: 'POST', body: { door: 'desk', entries, confirm, together: true } });
  const at = body.entries.findIndex(({ problem }) => problem && problem.type !== '/problems/entry/one-was-refused');
  const problem = body.entries[at]?.problem;
  if (problem) throw new RefusedPart(withoutFacts(problem), at);
}

/** @throws Refused with the problem of the first entry that was not taken */
export function refuseFirst(entries: readonly WrittenEntry[]): void {
  const problem = entries.find(({ status }) => status === 'refused')?.problem;
  if (problem) throw new Refused(withoutFacts(problem));
}

/** What does not add up is shown with its numbers; saying them in a sentence, too, would be twice. */
export function withoutFacts({ facts, ...problem }: EntryProblem): EntryProblem {
  return problem.discrepancies || !facts ? { ...problem } : { ...problem, facts };
}
