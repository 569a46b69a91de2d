import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import { comparisonOpinion } from './comparison.ts';
import { ageOpinion } from './donor-age.ts';
import { donorsOpinion } from './donors-of-stand.ts';
import { firstCheckOpinion, verdictOpinion } from './first-check.ts';
import { hormoneOpinion } from './hormone.ts';
import { lengthOpinion } from './length.ts';
import { lightOpinion } from './light.ts';
import { mediumOpinion } from './medium.ts';
import type { Opinion } from './opinion.ts';
import { placesOpinion } from './places.ts';
import type { SecondOpinionQuestion } from './question.ts';
import { strippedOpinion } from './stripped.ts';

const CHECKS = [lengthOpinion, mediumOpinion, hormoneOpinion, lightOpinion, ageOpinion, strippedOpinion, placesOpinion, donorsOpinion, comparisonOpinion, firstCheckOpinion, verdictOpinion];
const ORDER: readonly Opinion['verdict'][] = ['unusual', 'usual', 'no-evidence', 'not-told'];

/**
 * What somebody with experience would ask on the day of sticking, while it can still be mended.
 *
 * It warns and never blocks. Ranges come from what is published of the species, else from the programme's own closed
 * stickings, else from common practice, each marked as such; where nothing speaks, that is said, and nothing is called unusual.
 *
 * @param question lines of one species, stand and day, at least one
 * @returns one opinion a check, the unusual first
 * @throws DomainError `survival/not-a-count` for cuttings, `survival/no-plants` without lines
 */
export function secondOpinion(question: SecondOpinionQuestion): Opinion[] {
  if (question.lines.length === 0) throw new DomainError('survival/no-plants', 'an opinion needs at least one cutting');
  for (const { cuttings, strippedAround = 0 } of question.lines) {
    if (!isCount(cuttings) || !isCount(strippedAround)) throw new DomainError('survival/not-a-count', 'cuttings are whole numbers', { cuttings, strippedAround });
  }
  const opinions = CHECKS.map((check) => check(question));
  return ORDER.flatMap((verdict) => opinions.filter((one) => one.verdict === verdict));
}
