import type { FunnelStage } from '@sprigline/contract';
import { scaleLinear } from 'd3-scale';

/** Parts of a stage's plants, from the middle outwards. */
export const FATES = ['goneOn', 'here', 'away', 'lost'] as const;
export type Fate = (typeof FATES)[number];

export interface Part {
  readonly fate: Fate;
  readonly plants: number;
  /** Per cent of the lane's width, from its outer edge, where the bar's far end is. */
  readonly from: number;
  readonly width: number;
}

export interface FunnelRow {
  readonly stage: FunnelStage['stage'];
  readonly reached: number;
  readonly parts: readonly Part[];
  /** Per cent of the lane that went on from the stage before, and that came to this one. */
  readonly joint: { readonly above: number; readonly below: number };
}

/** Where the plants of a stage are: gone on, here, away without a verdict (given out, stuck again, mixed), or lost. */
export function fatesOf(stage: FunnelStage): Readonly<Record<Fate, number>> {
  const died = Object.values(stage.died).reduce((sum, n) => sum + n, 0);
  return {
    goneOn: stage.goneOn,
    here: stage.here,
    // More may have come from mixed batches than went into them.
    away: Math.max(0, stage.givenOut + stage.restuck + stage.mixedAway),
    lost: died + stage.unaccounted + stage.notRooted + stage.thrownOut,
  };
}

/**
 * The lane of plants, which grows outwards from the middle. What went on stands innermost, so that
 * each bar rests on the one before it, and what was lost falls away at the rim.
 */
export function funnelRows(stages: readonly FunnelStage[]): FunnelRow[] {
  const fates = stages.map(fatesOf);
  const most = Math.max(1, ...fates.map((of) => FATES.reduce((sum, fate) => sum + of[fate], 0)));
  const width = scaleLinear([0, most], [0, 100]);
  return stages.map((stage, at) => {
    const of = fates[at] ?? fatesOf(stage);
    let inner = 100;
    const parts = FATES.map((fate) => {
      inner -= width(of[fate]);
      return { fate, plants: of[fate], from: inner, width: width(of[fate]) };
    });
    return {
      stage: stage.stage,
      reached: stage.reached,
      parts: parts.filter(({ plants }) => plants > 0),
      joint: { above: width(stages[at - 1]?.goneOn ?? 0), below: at === 0 ? 0 : 100 - inner },
    };
  });
}
