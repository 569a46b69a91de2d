import type { TimeAxis } from '@sprigline/contract';
import { dayNumber, dayOfNumber } from '@sprigline/domain';
import type { Change, Looked } from './time-axis.queries.ts';

type Points = Pick<TimeAxis, 'weeks' | 'points'>;
type Plants = Pick<TimeAxis['points'][number], 'cutting' | 'liner' | 'potted' | 'planted'>;

/** More would stand closer than a line is wide. */
const MOST_POINTS = 104;
const WEEK = 7;

/**
 * Plants on hand at the end of equal steps of whole weeks that end on the day of the reading. The
 * first point lies before the first plant, so that the line begins at none.
 *
 * @param changes in any order, none after `asOf`
 */
export function timeAxis(changes: readonly Change[], looked: readonly Looked[], asOf: string): Points {
  if (changes.length === 0) return { weeks: 1, points: [] };
  const first = changes.reduce((day, change) => (change.day < day ? change.day : day), asOf);
  const span = dayNumber(asOf) - dayNumber(first) + 1;
  const weeks = Math.max(1, Math.ceil(span / WEEK / MOST_POINTS));
  const steps = Math.ceil(span / (weeks * WEEK));
  const ends = Array.from({ length: steps + 1 }, (_, at) => dayNumber(asOf) - (steps - at) * weeks * WEEK);
  const stepOf = (day: string): number => Math.max(0, Math.ceil((dayNumber(day) - (ends[0] ?? 0)) / (weeks * WEEK)));

  const here: Plants = { cutting: 0, liner: 0, potted: 0, planted: 0 };
  const points = ends.map((end, at) => {
    for (const { stage, n } of changes.filter(({ day }) => stepOf(day) === at)) here[stage] += n;
    const seen = looked.filter(({ day }) => stepOf(day) === at).reduce((sum, { batches }) => sum + batches, 0);
    return { day: dayOfNumber(end), ...here, looked: seen };
  });
  return { weeks, points };
}
