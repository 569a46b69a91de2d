import type { FunnelStage } from '@sprigline/contract';
import { scaleLinear } from 'd3-scale';
import { area, curveBumpY } from 'd3-shape';

/** Narrow enough to be read on a phone; on a desk it grows with its card. Units are those of the view box. */
export const WIDTH = 340;
export const MIDDLE = WIDTH / 2;
/** Half of the lane between the two sides, where stages and numbers stand. */
export const LANE = 58;
export const HEAD = 30;
export const ROW = 66;
export const BAR = 24;
const REACH = MIDDLE - LANE - 2;

/** Donor trees are drawn one by one up to here, so that they can be counted; more of them are a bar. */
const COUNTABLE = 32;
const WIDEST_STEP = 13;

export interface Dot {
  readonly x: number;
  /** Still has a plant, here or later. */
  readonly isLeft: boolean;
}

/** Widths of a bar's parts, from the lane outward. */
export interface Bar {
  readonly goneOn: number;
  readonly here: number;
  /** Dead, missing, thrown out, given out, stuck again. */
  readonly away: number;
}

export interface FunnelRow {
  readonly stage: FunnelStage['stage'];
  readonly top: number;
  readonly bar: Bar;
  readonly dots: readonly Dot[];
  /** Instead of dots, where there are too many to count. */
  readonly donorBar: { readonly reached: number; readonly left: number } | undefined;
}

export interface FunnelDrawing {
  readonly rows: readonly FunnelRow[];
  readonly dotRadius: number;
  /** The stream of plants that went on, one path from each stage to the next. */
  readonly streams: readonly string[];
}

/** Where everything of a paired funnel stands. Plants grow to the left, donor trees to the right of the stages. */
export function drawFunnel(stages: readonly FunnelStage[]): FunnelDrawing {
  const plants = scaleLinear([0, Math.max(1, ...stages.map(partsOf).map(({ goneOn, here, away }) => goneOn + here + away))], [0, REACH]);
  const most = Math.max(1, ...stages.map(({ donors }) => donors.reached));
  const donors = scaleLinear([0, most], [0, REACH]);
  const step = Math.min(WIDEST_STEP, REACH / most);
  const rows = stages.map((stage, at) => {
    const { goneOn, here, away } = partsOf(stage);
    return {
      stage: stage.stage,
      top: HEAD + at * ROW,
      bar: { goneOn: plants(goneOn), here: plants(here), away: plants(away) },
      dots: most <= COUNTABLE ? Array.from({ length: stage.donors.reached }, (_, dot) => ({ x: MIDDLE + LANE + step * (dot + 0.5), isLeft: dot < stage.donors.left })) : [],
      donorBar: most <= COUNTABLE ? undefined : { reached: donors(stage.donors.reached), left: donors(stage.donors.left) },
    };
  });
  return { rows, dotRadius: step * 0.38, streams: rows.slice(1).map((row, at) => stream(rows[at] ?? row, row)) };
}

/** Plants that came to a stage, by what became of them there. */
const partsOf = ({ reached, goneOn, here }: FunnelStage) => ({ goneOn, here, away: Math.max(0, reached - goneOn - here) });

/** From what went on at one stage to the whole bar of the next. */
function stream(from: FunnelRow, to: FunnelRow): string {
  const edge = MIDDLE - LANE;
  const { goneOn, here, away } = to.bar;
  const ends: [number, number][] = [[from.top + BAR, from.bar.goneOn], [to.top, Math.min(from.bar.goneOn, goneOn + here + away)]];
  return area<[number, number]>().y(([y]) => y).x0(edge).x1(([, width]) => edge - width).curve(curveBumpY)(ends) ?? '';
}
