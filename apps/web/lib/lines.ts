import 'server-only';
import type { Problem, WrittenEntry } from '@sprigline/contract';
import type { UncheckedEntry } from './entry-said.ts';
import { lineField } from './line-field.ts';
import { withoutFacts, writeEntries } from './ledger.ts';
import { Refused } from './refused.ts';
import { wordsFor } from './words-for.ts';

export interface LineEntry {
  /** Which line of the form it came from. */
  readonly at: number;
  readonly entry: UncheckedEntry;
}

/**
 * Writes one entry a line: a refused line does not keep the others out, and none is written twice.
 *
 * @param fieldOf the field of a line that a refusal stands beside
 * @param shared fields that all lines have in common
 * @throws Refused with a sentence for every line that was refused
 */
export async function writeLines(programme: string, said: readonly LineEntry[], isConfirmed: boolean, fieldOf: (problem: Problem) => string, shared: readonly string[]): Promise<void> {
  const entries = said.map(({ entry }) => entry);
  let written: readonly WrittenEntry[];
  try {
    ({ entries: written } = await writeEntries(programme, entries, isConfirmed ? entries.map(({ id }) => id) : []));
  } catch (error) {
    throw error instanceof Refused ? new Refused(atTheirLines(error.problem, said, shared)) : error;
  }
  const refused = written.flatMap(({ id, problem }) => {
    const line = said.find(({ entry }) => entry.id === id);
    return problem && line ? [{ problem, at: line.at }] : [];
  });
  const [first] = refused;
  if (!first) return;
  const errors = await Promise.all(refused.map(async ({ problem, at }) => ({ pointer: `#/${lineField(at, fieldOf(problem))}`, detail: await wordsFor(withoutFacts(problem)) })));
  throw new Refused({ ...withoutFacts(first.problem), errors });
}

/** The API speaks of entries in the order sent; the form has a line for every batch, sent or not. */
export function atTheirLines(problem: Problem, said: readonly LineEntry[], shared: readonly string[]): Problem {
  const errors = problem.errors?.map(({ pointer, detail }) => {
    const [, index = '', field = ''] = /^#\/entries\/(\d+)\/(?:saying\/)?(.*)$/.exec(pointer) ?? [];
    const line = said[Number(index)];
    if (index === '' || !line) return { pointer, detail };
    // What somebody typed into a field of its own: how cuttings were damaged, of what plants died.
    const own = field.replace(/^(?:damaged|dead)\/\d+\/(how|cause)$/, '$1');
    return { pointer: `#/${shared.includes(own) ? own : lineField(line.at, own)}`, detail };
  });
  return errors ? { ...problem, errors } : problem;
}
