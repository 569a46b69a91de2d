import { trialVerdict } from '../comparison/trial-verdict.ts';
import { type Opinion, noEvidence } from './opinion.ts';
import type { SecondOpinionQuestion } from './question.ts';

/** Two recipes ask which is better. Can these cuttings ever say so? Nothing to say where there is one recipe. */
export function comparisonOpinion({ lines, day }: SecondOpinionQuestion): Opinion {
  const told = lines.filter(({ recipeId }) => recipeId !== undefined);
  const arms = new Set(told.map(({ recipeId }) => recipeId));
  if (arms.size < 2) return noEvidence('comparison', 'one-recipe', { recipes: arms.size });
  const rows = told.map((line) => ({ arm: line.recipeId ?? '', plants: line.cuttings, donor: line.donorId, day, ...(line.trayId !== undefined && { tray: line.trayId }), ...(line.benchId !== undefined && { bench: line.benchId }) }));
  const { mayCompare, mixedUpWith, advice } = trialVerdict(rows);
  const facts = { recipes: arms.size, mixedUpWith: mixedUpWith.join(' '), advice: advice.join(' ') };
  return mayCompare
    ? { about: 'comparison', verdict: 'usual', basis: 'common-practice', says: 'can-answer', donors: [], facts }
    : { about: 'comparison', verdict: 'unusual', basis: 'common-practice', says: 'cannot-answer', donors: [], facts };
}
