import { type Opinion, noEvidence } from './opinion.ts';
import type { SecondOpinionQuestion } from './question.ts';

/** Common practice: of slow conifers nothing can be said before half a year has passed. */
export const SLOW_DAYS = 183;

/** A first look for roots so early that it can only find none: cuttings lifted for it are set back for nothing. */
export function firstCheckOpinion({ species, firstCheck, ownFirstRootsDays }: SecondOpinionQuestion): Opinion {
  const [basis, earliest] = species?.firstRootsDays !== undefined ? (['species-row', species.firstRootsDays] as const) : (['own-history', ownFirstRootsDays] as const);
  const facts = { days: firstCheck.days, ...(earliest !== undefined && { earliest }) };
  if (earliest === undefined) return noEvidence('first-check', 'unknown', facts);
  const isEarly = firstCheck.days < earliest;
  return { about: 'first-check', verdict: isEarly ? 'unusual' : 'usual', basis, says: isEarly ? 'too-early' : 'late-enough', donors: [], facts };
}

/** The day on which what has not rooted is called: too early, and slow ones are thrown out alive. */
export function verdictOpinion({ species, verdict }: SecondOpinionQuestion): Opinion {
  const facts = { days: verdict.days, earliest: SLOW_DAYS };
  if (species === undefined) return noEvidence('verdict', 'unknown', facts);
  const isEarly = species.isSlow && verdict.days < SLOW_DAYS;
  return { about: 'verdict', verdict: isEarly ? 'unusual' : 'usual', basis: 'common-practice', says: isEarly ? 'too-early' : 'late-enough', donors: [], facts };
}

/** Days after which an honest verdict is possible: those planned, and at least half a year for slow conifers and whatever is in no table. */
export const honestVerdictDays = ({ species, verdict }: Pick<SecondOpinionQuestion, 'species' | 'verdict'>): number =>
  (species?.isSlow ?? true) ? Math.max(verdict.days, SLOW_DAYS) : verdict.days;
