import type { FunnelGroup } from '@sprigline/contract';

/** What the sentence over a funnel says. */
export interface FunnelSums {
  /** Plants that came in from outside, each counted once, at the stage where it came. */
  readonly n: number;
  /** Whether all of them came as cuttings. */
  readonly areCuttings: boolean;
  readonly donors: number;
  readonly here: number;
  /** Planted out and here. */
  readonly planted: number;
  readonly left: number;
}

export function sumsOf({ stages, donors }: Pick<FunnelGroup, 'stages' | 'donors'>): FunnelSums {
  const came = stages.map(({ reached }, at) => Math.max(0, reached - (stages[at - 1]?.goneOn ?? 0)));
  return {
    n: came.reduce((sum, plants) => sum + plants, 0),
    areCuttings: came.slice(1).every((plants) => plants === 0),
    donors: donors.came,
    here: stages.reduce((sum, { here }) => sum + here, 0),
    planted: stages.find(({ stage }) => stage === 'planted')?.here ?? 0,
    left: donors.left,
  };
}
