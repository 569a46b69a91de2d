import 'server-only';
import type { Problem } from '@sprigline/contract';
import { getTranslations } from 'next-intl/server';
import { codeOf } from './refused.ts';

/** What a person reads when the API refuses. A code without words falls back on the API's own sentence. */
export async function wordsFor(problem: Problem): Promise<string> {
  const [refusals, ui] = await Promise.all([getTranslations('refusals'), getTranslations('ui')]);
  const code = codeOf(problem) as Parameters<typeof refusals>[0];
  const words = refusals.has(code) ? refusals(code) : (problem.detail ?? problem.title);

  if (codeOf(problem) === 'http/sign-in-first') return `${words} ${ui('signInAgain')}`;
  if (problem.status >= 500 && problem.instance) return `${words}. ${ui('reference', { id: problem.instance })}`;
  // The numbers behind a refusal are only in the API's sentence.
  const hasNumbers = Object.keys(problem.facts ?? {}).length > 0;
  return hasNumbers && problem.detail ? `${words} (${problem.detail})` : words;
}
