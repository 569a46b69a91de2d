import type { CompareBy, TrialLayout } from '@sprigline/contract';
import type { useTranslations } from 'next-intl';

/** The smallest trial that is good enough, else the largest that was tried. */
export const chosenSize = ({ sizes, cuttingsEach }: TrialLayout): TrialLayout['sizes'][number] | undefined => sizes.find((size) => size.cuttingsEach === cuttingsEach) ?? sizes.at(-1);

export const isOfHormone = (by: CompareBy): boolean => by === 'recipe' || by === 'hormone';

export const in100 = (share: number): number => Math.round(Math.abs(share) * 100);

export const inAll = (each: number, { blocks }: TrialLayout): number => each * 2 * blocks.length;

/** How many cuttings of each tree it takes, and what they can find. */
export function sizeSaid(layout: TrialLayout, t: ReturnType<typeof useTranslations<'comparison.trial'>>): string {
  const chosen = chosenSize(layout);
  if (!chosen) return '';
  const all = inAll(chosen.cuttingsEach, layout).toLocaleString('en');
  return t(layout.cuttingsEach === null ? 'notEnough' : 'enough', { n: chosen.cuttingsEach, all, points: in100(layout.toFind), chance: in100(chosen.chance) });
}
