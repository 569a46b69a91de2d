import type { RootingCurve } from '@sprigline/contract';
import type { useTranslations } from 'next-intl';
import { percent, percentRange } from '../../lib/percent.ts';

type Words = ReturnType<typeof useTranslations<'timeToRoot'>>;

/** Fewer with roots say nothing of how long it takes. */
export const ROOTED_NEEDED = 10;
/** With more undecided than this, what roots late is still missing. */
const MOST_UNDECIDED = 0.1;

/** What a curve says, for somebody who never saw one. */
export function rootingSentence(t: Words, curve: RootingCurve): string {
  const { rooted, cuttings, halfOfRooting: half, undecidedShare, firstRootsAfterDays } = curve;
  const [last] = curve.steps.slice(-1);
  if (rooted < ROOTED_NEEDED || !half || !last) return t('tooFew', { cuttings, rooted });
  const range = last.lower !== undefined && last.upper !== undefined ? ` (${percentRange({ lower: last.lower, upper: last.upper })})` : '';
  return [
    t('half', { weeks: Math.round(half.week), limits: limitsSaid(t, half) }),
    t('ended', { share: percent(last.rooted), week: Math.ceil(last.week), limits: range }),
    ...(firstRootsAfterDays === null ? [] : [t('first', { days: firstRootsAfterDays })]),
    ...(undecidedShare > MOST_UNDECIDED ? [t('soFar', { share: percent(undecidedShare) })] : []),
  ].join(' ');
}

function limitsSaid(t: Words, { lower, upper }: NonNullable<RootingCurve['halfOfRooting']>): string {
  if (lower !== undefined && upper !== undefined) return t('limits', { lower: Math.round(lower), upper: Math.round(upper) });
  if (lower !== undefined) return t('from', { lower: Math.round(lower) });
  return upper === undefined ? '' : t('to', { upper: Math.round(upper) });
}
