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
 * @throws DomainError `survival/no-plants` without lines; `survival/not-a-count` for cuttings, donor trees and places that are no whole numbers;
 *   `survival/not-a-time` for days below 0; `numbers/not-a-size` for a length, an age, a strength or hours below 0
 */
export function secondOpinion(question: SecondOpinionQuestion): Opinion[] {
  refuseUnlessAsked(question);
  const opinions = CHECKS.map((check) => check(question));
  return ORDER.flatMap((verdict) => opinions.filter((one) => one.verdict === verdict));
}

function refuseUnlessAsked({ lines, past, firstCheck, verdict, ownFirstRootsDays, donorsWanted, donorsAlready, placesPerDonor }: SecondOpinionQuestion): void {
  if (lines.length === 0) throw new DomainError('survival/no-plants', 'an opinion needs at least one cutting');
  const counts = [...lines.flatMap(({ cuttings, strippedAround }) => [cuttings, strippedAround]), ...past.flatMap(({ goneOn, settled }) => [goneOn, settled]), donorsWanted, donorsAlready, placesPerDonor];
  const odd = counts.find((n) => n !== undefined && !isCount(n));
  if (odd !== undefined) throw new DomainError('survival/not-a-count', 'cuttings, donor trees and places are whole numbers', { odd });
  const days = [firstCheck.days, verdict.days, ownFirstRootsDays].find((n) => n !== undefined && !isSize(n));
  if (days !== undefined) throw new DomainError('survival/not-a-time', 'days are 0 or more', { days });
  const sizes = [...lines.flatMap(({ lightHours }) => [lightHours]), ...[...lines, ...past].flatMap(({ ageYears, lengthCm, hormonePpm }) => [ageYears, lengthCm, hormonePpm])];
  const size = sizes.find((n) => n !== undefined && !isSize(n));
  if (size !== undefined) throw new DomainError('numbers/not-a-size', 'lengths, ages, strengths and hours are 0 or more', { size });
}

const isSize = (n: number): boolean => n >= 0 && n < Number.POSITIVE_INFINITY;
