import { type Opinion, noEvidence } from './opinion.ts';
import type { SecondOpinionQuestion } from './question.ts';

/**
 * Too few donor trees for what the stand's plan wants.
 *
 * Counted are the trees stuck from now and those of the stand that have living plants already. Not every tree that is stuck
 * from will arrive: how many are expected to stands beside it. Without a plan for the stand there is nothing to hold it against.
 */
export function donorsOpinion({ lines, donorsWanted, donorsAlready }: SecondOpinionQuestion): Opinion {
  const now = new Set(lines.map(({ donorId }) => donorId)).size;
  const facts = { now, already: donorsAlready, together: now + donorsAlready };
  if (donorsWanted === undefined) return noEvidence('donors', 'no-target', facts);
  const isEnough = now + donorsAlready >= donorsWanted;
  return { about: 'donors', verdict: isEnough ? 'usual' : 'unusual', basis: 'common-practice', says: isEnough ? 'enough' : 'too-few', donors: [], facts: { ...facts, wanted: donorsWanted } };
}
