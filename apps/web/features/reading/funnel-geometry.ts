import type { FunnelStage } from '@sprigline/contract';
import { scaleLinear } from 'd3-scale';

/** The drawing is as wide as a phone; on a desk it grows with its card. Units are those of the view box. */
export const WIDTH = 400;
export const ROW = 62;
export const HEAD = 34;
const MIDDLE = WIDTH / 2;
/** Half of the lane between the two sides, where the stages stand. */
const LANE = 44;
const LONGEST_BAR = 100;

/** Donor trees are drawn one by one up to here, so that they can be counted; more of them are a bar. */
const COUNTABLE = 32;
const A_LINE = 7;
const STEP = 13;
export const DOT = 4.6;

export interface Dot {
  readonly x: number;
  readonly y: number;
  /** Still has a plant, here or later. */
  readonly isLeft: boolean;
}

export interface FunnelRow {
  readonly stage: FunnelStage['stage'];
  readonly top: number;
  /** Plants: the pale bar is what came so far, the dark one within it what is here. */
  readonly bar: { readonly x: number; readonly reached: number; readonly here: number };
  readonly dots: readonly Dot[];
  /** Instead of dots, where there are too many to count. */
  readonly donorBar: { readonly x: number; readonly reached: number; readonly left: number } | undefined;
}

/** Where everything of a paired funnel stands. Plants grow to the left, donor trees to the right of the stages. */
export function funnelRows(stages: readonly FunnelStage[]): FunnelRow[] {
  const plants = scaleLinear([0, Math.max(1, ...stages.map(({ reached }) => reached))], [0, LONGEST_BAR]);
  const most = Math.max(1, ...stages.map(({ donors }) => donors.reached));
  const donors = scaleLinear([0, most], [0, LONGEST_BAR]);
  return stages.map(({ stage, reached, here, donors: of }, at) => {
    const top = HEAD + at * ROW;
    return {
      stage,
      top,
      bar: { x: MIDDLE - LANE, reached: plants(reached), here: plants(here) },
      dots: most <= COUNTABLE ? dotsOf(of.reached, of.left, top) : [],
      donorBar: most <= COUNTABLE ? undefined : { x: MIDDLE + LANE, reached: donors(of.reached), left: donors(of.left) },
    };
  });
}

function dotsOf(reached: number, left: number, top: number): Dot[] {
  return Array.from({ length: reached }, (_, at) => ({
    x: MIDDLE + LANE + DOT + (at % A_LINE) * STEP,
    y: top + 9 + Math.floor(at / A_LINE) * STEP,
    isLeft: at < left,
  }));
}
