import type { FunnelStage } from '@sprigline/contract';
import { scaleLinear } from 'd3-scale';

export const WIDTH = 340;
export const ROW = 60;
export const EDGE = 12;

const share = scaleLinear([0, 1], [EDGE, WIDTH - EDGE]);

export const TICKS = [0, 0.25, 0.5, 0.75, 1].map((at) => ({ at, x: share(at) }));

interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface SpreadRow {
  readonly stage: FunnelStage['stage'];
  readonly top: number;
  readonly rate: number | undefined;
  /** Where the share can still end; nothing where enough is decided. */
  readonly open: Stretch | undefined;
  readonly alone: Stretch | undefined;
  readonly byDonor: Stretch | undefined;
  /** Worst and best donor tree, where they are too few for a range. */
  readonly extremes: readonly number[];
}

/** Where the marks of shares and their ranges stand, on one line from none to all. */
export function spreadRows(stages: readonly FunnelStage[]): SpreadRow[] {
  return stages.filter(({ survival }) => survival !== undefined).map(({ stage, survival, wilson, byDonor }, at) => ({
    stage,
    top: at * ROW,
    rate: survival?.rate === undefined ? undefined : share(survival.rate),
    open: survival?.needsRange ? stretch(survival.range) : undefined,
    alone: wilson && stretch(wilson),
    byDonor: byDonor?.kind === 'interval' ? stretch(byDonor) : undefined,
    extremes: byDonor?.kind === 'best-and-worst' ? [share(byDonor.worst.rate), share(byDonor.best.rate)] : [],
  }));
}

const stretch = ({ lower, upper }: { lower: number; upper: number }): Stretch => ({ from: share(lower), to: share(upper) });
