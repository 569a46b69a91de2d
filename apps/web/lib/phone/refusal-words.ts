import type { EntryProblem, Problem } from '@sprigline/contract';
import { codeOf } from '../refused.ts';

/** Words by the code of a refusal. */
export type RefusalWords = Readonly<Record<string, string>>;

/** So many of the things that do not fit are told. */
const MOST = 3;

/**
 * What a person reads on a phone when the server does not take something: short, and what to do about it.
 *
 * @param onPhone words for where what to do is another thing on a phone than at the desk
 * @param fill puts the numbers behind the refusal into words that ask for them
 * @returns of a code without words what the API says itself
 */
export function refusalSaid(problem: Problem | EntryProblem, { refusals, onPhone }: { readonly refusals: RefusalWords; readonly onPhone: RefusalWords }, fill: (words: string, facts: Readonly<Record<string, string | number>>) => string): string {
  const code = codeOf(problem);
  const words = onPhone[code] ?? refusals[code];
  if (words === undefined) return problem.detail ?? problem.title;
  const said = fill(words, problem.facts ?? {});
  const unfit = (problem.errors ?? []).slice(0, MOST).map(({ pointer, detail }) => `${pointer.split('/').at(-1) ?? ''} ${detail}`.trim());
  return unfit.length === 0 ? said : `${said} (${unfit.join('; ')})`;
}
