import 'server-only';
import type { FormState } from './form-state.ts';
import { Refused } from './refused.ts';
import { wordsFor } from './words-for.ts';

/** Never sent back into a page. */
const SECRET = /password/i;

/**
 * Sends what a form says and answers the form's next state: done, or the
 * problem beside what was typed. Anything that is not a refusal is thrown.
 */
export async function submit(before: FormState, form: FormData, send: () => Promise<unknown>): Promise<FormState> {
  const turn = before.turn + 1;
  try {
    await send();
    return { turn, values: {}, isDone: true };
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return { turn, values: typedInto(form), problem: error.problem, words: await wordsFor(error.problem) };
  }
}

function typedInto(form: FormData): Record<string, string> {
  const values: Record<string, string> = {};
  for (const [name, value] of form) {
    if (typeof value === 'string' && !name.startsWith('$') && !SECRET.test(name)) values[name] = value;
  }
  return values;
}
