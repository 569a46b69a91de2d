import { type Opinion, noEvidence, notTold } from './opinion.ts';
import { bothSides, isHeard } from './own-share.ts';
import type { SecondOpinionQuestion } from './question.ts';
import { labelsOf } from './within.ts';

/** Words by which people say what a medium is made of. */
const INGREDIENTS: Readonly<Record<string, RegExp>> = {
  moss: /\b(moss|sphagnum)\b/i, peat: /\bpeat\b/i, sand: /\b(sand|grit)\b/i, perlite: /\bperlite\b/i, vermiculite: /\bvermiculite\b/i, pumice: /\bpumice\b/i,
  bark: /\bbark\b/i, coir: /\bcoir\b/i, soil: /\b(soil|loam|earth)\b/i, compost: /\b(compost|manure)\b/i,
};

/** What a medium is made of, as far as its words tell. Peat and moss are told apart; sand stands for grit too. */
export const ingredientsOf = (medium: string): string[] => Object.keys(INGREDIENTS).filter((name) => INGREDIENTS[name]?.test(medium));

/** Common practice: equal parts of moss or peat and sand, or what drains as well. */
const USUAL = ['moss', 'peat', 'sand', 'perlite', 'vermiculite', 'pumice', 'coir'];

/** What the medium is made of: by the species row, else by own trays of the same medium that rooted, else by common practice. */
export function mediumOpinion({ lines, species, past }: SecondOpinionQuestion): Opinion {
  const told = lines.filter(({ medium }) => medium !== undefined);
  if (told.length === 0) return notTold('medium');
  const made = new Set(told.flatMap(({ medium = '' }) => ingredientsOf(medium)));
  const facts = { medium: [...new Set(told.map(({ medium = '' }) => medium))].join('; '), usual: (species?.medium ?? ['moss', 'peat', 'sand']).join(', ') };
  const same = (medium: string | undefined) => medium === undefined ? undefined : ingredientsOf(medium).join() === [...made].join();
  const sides = bothSides(past, ({ medium }) => same(medium));
  if (made.size === 0) return noEvidence('medium', 'unknown', facts);

  const foreign = (medium: string, usual: readonly string[]) => ingredientsOf(medium).some((one) => !usual.includes(one));
  const odd = (usual: readonly string[]) => told.filter(({ medium = '' }) => foreign(medium, usual));
  if (species?.medium) return opinionOn(odd([...species.medium, ...(species.medium.includes('peat') ? ['moss'] : [])]), 'species-row');
  if (isHeard(sides.like) && sides.like.goneOn > 0) return { about: 'medium', verdict: 'usual', basis: 'own-history', says: 'within', donors: [], facts, ...sides };
  return opinionOn(odd(USUAL), 'common-practice');

  function opinionOn(outside: typeof told, basis: 'species-row' | 'common-practice'): Opinion {
    if (outside.length === 0) return { about: 'medium', verdict: 'usual', basis, says: 'within', donors: [], facts, ...sides };
    return { about: 'medium', verdict: 'unusual', basis, says: 'outside', donors: outside.length === lines.length ? [] : labelsOf(outside), facts, ...sides };
  }
}
