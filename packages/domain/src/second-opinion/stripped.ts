import { type Opinion, notTold } from './opinion.ts';
import type { SecondOpinionQuestion } from './question.ts';
import { labelsOf } from './within.ts';

/** Bark torn off all around: what the leaves make cannot come down to where roots would grow. Common practice. */
export function strippedOpinion({ lines }: SecondOpinionQuestion): Opinion {
  const told = lines.filter(({ strippedAround }) => strippedAround !== undefined);
  if (told.length === 0) return notTold('stripped');
  const torn = told.filter(({ strippedAround = 0 }) => strippedAround > 0);
  const facts = { cuttings: torn.reduce((sum, { strippedAround = 0 }) => sum + strippedAround, 0), of: told.reduce((sum, { cuttings }) => sum + cuttings, 0) };
  if (torn.length === 0) return { about: 'stripped', verdict: 'usual', basis: 'common-practice', says: 'bark-whole', donors: [], facts };
  return { about: 'stripped', verdict: 'unusual', basis: 'common-practice', says: 'torn', donors: labelsOf(torn), facts };
}
