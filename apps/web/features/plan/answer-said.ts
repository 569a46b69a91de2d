import type { PlanAnswer, PlanTarget } from '@sprigline/contract';
import type { Messages, useTranslations } from 'next-intl';
import { percent } from '../../lib/percent.ts';

type Said = Messages['plans'];
type Translate = ReturnType<typeof useTranslations<'plans'>>;

/** What a target wants, and what was worked out for it; for the page, for paper, and for people outside. */
export type Wanted = Pick<PlanTarget, 'plants' | 'donors' | 'stage' | 'confidence'>;
export type Answer = Omit<PlanAnswer, 'trees'>;

/** "20 plants planted out, of 8 donor trees, in 8 years in 10, for Hag Bank." */
export function wantedSaid({ plants, donors, stage, confidence }: Wanted, site: string | undefined, said: Said, t: Translate): string {
  const sure = said.sure[String(Math.round(confidence * 100)) as keyof Said['sure']] ?? percent(confidence);
  return t('sentence', { plants, donors, stage: said.stages[stage], sure, site: site ?? 'none' });
}

/** What to stick, or why nothing can be said. */
export function answerSaid({ donors }: Wanted, { bets, refused }: Answer, trees: number, t: Translate): string {
  if (bets) return t('answer', { each: bets.asPlanned.cuttingsPerDonor, trees: bets.asPlanned.trees, cuttings: bets.asPlanned.cuttings });
  return refused === 'planning/too-few-trees' ? t('refused.planning/too-few-trees', { donors, trees }) : t('refused.planning/impossible', { trees });
}

/** What it should bring; nothing where there is no answer. */
export function bringsSaid({ bets, expected }: Answer, t: Translate): string | undefined {
  if (!bets || !expected) return undefined;
  return t('brings', { plants: Math.round(expected.plants.expected), lower: expected.plants.lower, upper: expected.plants.upper, donors: Math.round(expected.donors.expected), chance: percent(bets.asPlanned.chance) });
}

export const averageSaid = ({ needed }: Answer, t: Translate): string => (needed ? t('average', { once: needed.once, each: needed.eachStage }) : t('noAverage'));

/** Which of two ways to spend the same work does more for the target. */
export function betterBet({ bets }: Answer, said: Said): string | undefined {
  if (!bets) return undefined;
  return bets.oneMoreTree.chance >= bets.moreCuttings.chance ? said.betsSay.tree : said.betsSay.cuttings;
}

export const workedSaid = ({ rooting, toEnd, species }: Answer, said: Said, basis: string, t: Translate): readonly string[] => [
  said.worked.method,
  t('worked.from', {
    mean: percent(rooting.mean), goneOn: rooting.goneOn, settled: rooting.settled, donors: rooting.donors, weight: percent(rooting.ownWeight), held: percent(rooting.prior.mean), basis,
    likeness: toEnd.likeness.toFixed(2), end: percent(toEnd.mean),
  }),
  t('worked.source', { source: species?.source ?? basis }),
  said.worked.wrong,
];
