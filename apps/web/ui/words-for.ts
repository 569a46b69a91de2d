import type { Problem } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { codeOf } from '../lib/refused.ts';

/** What a person reads when the API refuses. A code without words falls back on the API's own sentence. */
export function useWordsFor(): (problem: Problem) => string {
  const refusals = useTranslations('refusals');
  const t = useTranslations('ui');

  return (problem) => {
    const code = codeOf(problem) as Parameters<typeof refusals>[0];
    const words = refusals.has(code) ? refusals(code) : (problem.detail ?? problem.title);
    if (problem.status === 401) return `${words} ${t('signInAgain')}`;
    if (problem.status >= 500 && problem.instance) return `${words}. ${t('reference', { id: problem.instance })}`;
    // The numbers behind a refusal are only in the API's sentence.
    return problem.facts && problem.detail && problem.detail !== words ? `${words} (${problem.detail})` : words;
  };
}
