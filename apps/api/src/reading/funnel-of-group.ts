import type { FunnelStage as Told } from '@sprigline/contract';
import { survivalFunnel, type FunnelStage, type StageTally } from '@sprigline/domain';
import type { GroupRow } from './funnel.queries.ts';

export interface WorkedGroup {
  readonly stages: readonly FunnelStage[];
  /** Of all stages together: a donor may have come in at a later one. */
  readonly donors: { readonly came: number; readonly left: number };
}

/** The funnel of one group. Its rates need how many died, not of what; the causes are put back stage by stage. */
export function funnelOfGroup({ tallies, causes }: Pick<GroupRow, 'tallies' | 'causes'>): WorkedGroup {
  const sound = tallies.map(tallyOf);
  return {
    stages: survivalFunnel(sound).map((stage) => ({ ...stage, died: diedAt(stage.stage, causes) })),
    donors: { came: distinct(sound, ({ cameIn }) => cameIn > 0), left: distinct(sound, ({ here }) => here > 0) },
  };
}

function tallyOf([donorId, stage, cameIn, goneOn, died, unaccounted, notRooted, thrownOut, givenOut, restuck, mixed, mixedIn, here, notFound]: GroupRow['tallies'][number]): StageTally {
  const ends = { goneOn, died: { 'of whatever cause': died }, unaccounted, notRooted, thrownOut, givenOut, restuck, mixed, here, notFound };
  return { donorId: donorId ?? undefined, stage, cameIn, mixedIn, ...ends };
}

const diedAt = (at: Told['stage'], causes: GroupRow['causes']): Record<string, number> =>
  Object.fromEntries(causes.filter(({ stage }) => stage === at).map(({ cause, n }) => [cause, n]));

function distinct(tallies: readonly StageTally[], has: (tally: StageTally) => boolean): number {
  return new Set(tallies.filter((tally) => tally.donorId !== undefined && has(tally)).map(({ donorId }) => donorId)).size;
}
