import type { Climate } from '@sprigline/contract';
import { scaleLinear } from 'd3-scale';

type Spread = NonNullable<Climate['days'][number]['temperatureC']>;

export interface ChartDay {
  readonly day: string;
  readonly spread: Spread;
  /** Share of the width, 0..1. */
  readonly x: number;
  /** Shares of the height, 0 at the top. */
  readonly top: number;
  readonly middle: number;
  readonly bottom: number;
}

export interface ChartShape {
  readonly days: readonly ChartDay[];
  readonly lowest: number;
  readonly highest: number;
  /** Values to be written at the side, with their share of the height. */
  readonly ticks: readonly { readonly value: number; readonly y: number }[];
}

const dayNumber = (day: string): number => Date.parse(`${day}T00:00:00Z`) / 86_400_000;

/**
 * Where the strokes of a chart stand: a day without readings stays empty, so that a gap is seen.
 *
 * @param days with a reading of this kind, the first one first
 * @returns nothing where there are none
 */
export function chartShape(from: string, until: string, days: readonly { readonly day: string; readonly spread: Spread }[]): ChartShape | undefined {
  if (days.length === 0) return undefined;
  const [lowest, highest] = [Math.min(...days.map(({ spread }) => spread.lowest)), Math.max(...days.map(({ spread }) => spread.highest))];
  // All readings alike: room above and below, or the scale would have no height.
  const y = scaleLinear([lowest === highest ? lowest - 1 : lowest, lowest === highest ? highest + 1 : highest], [1, 0]).nice(5);
  const width = dayNumber(until) - dayNumber(from) + 1;
  return {
    lowest, highest,
    ticks: y.ticks(5).map((value) => ({ value, y: y(value) })),
    days: days.map(({ day, spread }) => ({
      day, spread, x: (dayNumber(day) - dayNumber(from) + 0.5) / width, top: y(spread.highest), middle: y(spread.mean), bottom: y(spread.lowest),
    })),
  };
}
