import type { FunnelGroup } from '@sprigline/contract';

/** What the sentence over a funnel says. Plants that came in at a later stage count where they came in. */
export function sumsOf({ stages, donors }: Pick<FunnelGroup, 'stages' | 'donors'>) {
  const reached = stages.reduce((sum, stage, at) => sum + Math.max(0, stage.reached - (stages[at - 1]?.goneOn ?? 0)), 0);
  return {
    reached,
    donors: donors.came,
    here: stages.reduce((sum, { here }) => sum + here, 0),
    left: donors.left,
    planted: stages.at(-1)?.reached ?? 0,
  };
}
