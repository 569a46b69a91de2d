import { type Stage, STAGES } from '../ledger/entry.ts';
import { donorSpread, type DonorSpread } from './donor-spread.ts';
import type { Interval } from './interval.ts';
import { settledRate, type SettledRate } from './settled-rate.ts';
import { addTally, endsOf, NOTHING, type StageSum } from './stage-sum.ts';
import { refuseUnlessSound, type StageTally } from './stage-tally.ts';
import { wilsonInterval } from './wilson-interval.ts';

/** One step of the paired funnel: plants on one side, donors on the other. */
export interface FunnelStage extends StageSum {
  readonly stage: Stage;
  readonly donors: {
    /** Donors (clone groups) of which at least one plant came to this stage or past it. */
    readonly reached: number;
    /** Donors with at least one plant here now. */
    readonly here: number;
    /** Of those that came so far, the ones that still have a plant, here or at a later stage. */
    readonly left: number;
  };
  /** Not there when no plant has been decided or waits for it. At `planted` it is the share alive. */
  readonly survival?: SettledRate;
  /** Of the settled plants, as if each were independent. Not there while none is settled. */
  readonly wilson?: Interval;
  /** Of the settled plants, donor by donor. Not there while no plant of a known donor is settled. */
  readonly byDonor?: DonorSpread;
}

/**
 * What came, went on, was lost and is still there, stage by stage, for any set of stickings.
 *
 * Every stage counts the plants that came to it *or past it* (the tallies do), so a
 * stage that was skipped does not look like a loss. Received plants first count at their own
 * stage, which may therefore hold more than the one before it.
 *
 * @param tallies any number a donor and stage, in any order; filtering (stand, species, season ...) is the caller's
 * @returns the four stages in order; a stage that nothing reached has zeros and no rates
 * @throws DomainError `survival/not-a-count` for a negative or broken number
 * @throws DomainError `survival/nothing-after-planted` when plants go on from the last stage
 * @throws DomainError `survival/books-do-not-close` when a tally's plants do not add up
 *
 * Source: `settledRate`, `wilsonInterval` and `donorRatioInterval` name theirs; the sums are common practice.
 */
export function survivalFunnel(tallies: readonly StageTally[]): readonly FunnelStage[] {
  tallies.forEach(refuseUnlessSound);
  return STAGES.map((stage, at) => {
    const alive = new Set(tallies.filter((tally) => STAGES.indexOf(tally.stage) >= at && tally.here > 0).map(({ donorId }) => donorId));
    return funnelStage(stage, tallies.filter((tally) => tally.stage === stage), alive);
  });
}

/** @param alive donors with a plant at this stage or a later one */
function funnelStage(stage: Stage, tallies: readonly StageTally[], alive: ReadonlySet<string | undefined>): FunnelStage {
  const sums = new Map<string, StageSum>();
  for (const tally of tallies) {
    const { donorId } = tally;
    if (donorId !== undefined) sums.set(donorId, addTally(sums.get(donorId) ?? NOTHING, tally));
  }
  const total = tallies.reduce(addTally, NOTHING);
  const each = [...sums.values()];
  return {
    stage,
    ...total,
    donors: {
      reached: each.filter(({ reached }) => reached > 0).length,
      here: each.filter(({ here }) => here > 0).length,
      left: [...sums].filter(([donorId, { reached }]) => reached > 0 && alive.has(donorId)).length,
    },
    ...survivalOf(total, sums, stage),
  };
}

function survivalOf(
  total: StageSum,
  sums: ReadonlyMap<string, StageSum>,
  stage: Stage,
): Pick<FunnelStage, 'survival' | 'wilson' | 'byDonor'> {
  if (!hasPlants(total)) return {};

  const survival = settledRate(endsOf(total, stage));
  if (survival.settled === 0) return { survival };

  const known = [...sums].filter(([, sum]) => hasPlants(sum));
  const outcomes = known.map(([donorId, sum]) => {
    const { goneOn, settled } = settledRate(endsOf(sum, stage));
    return [donorId, { successes: goneOn, plants: settled }] as const;
  });
  const byDonor = donorSpread(new Map(outcomes));
  return { survival, wilson: wilsonInterval(survival.goneOn, survival.settled), ...(byDonor && { byDonor }) };
}

/** Whether any plant is settled or waits: those given out, restuck or mixed away say nothing about survival. */
function hasPlants({ reached, givenOut, restuck, mixedAway }: StageSum): boolean {
  return reached - givenOut - restuck - mixedAway > 0;
}
