import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import { type Stage, STAGES } from '../ledger/entry.ts';
import { alleleCapture } from './allele-capture.ts';
import { effectiveDonors, type EffectiveDonors } from './effective-donors.ts';
import { largestShare } from './largest-share.ts';
import type { MixedBatch } from './mixed-batch.ts';
import { mixedBounds, type MixedBounds } from './mixed-bounds.ts';
import { totalPlants } from './total-plants.ts';

/** Plants of one stand at one stage: of a donor (clone group), or mixed. Any number of rows a donor and stage. */
export type StandPlants = { readonly stage: Stage } & (
  | { readonly donorId: string; readonly plants: number }
  | MixedBatch
);

export interface StageDiversity {
  readonly stage: Stage;
  /** Donors with at least one plant that is surely theirs. */
  readonly donors: number;
  /** Plants of a known donor; all figures but `withMixed` are of these. */
  readonly plants: number;
  readonly mixedPlants: number;
  /** Plants of each known donor, most first. */
  readonly perDonor: readonly number[];
  /** Not there without a plant of a known donor. */
  readonly effective?: EffectiveDonors;
  /** The donor with most plants, the first by id among equals. Not there without a plant of a known donor. */
  readonly largest?: { readonly donorId: string; readonly plants: number; readonly share: number };
  /** Chance that an allele of frequency 0.05 is held by the known donors, a share. */
  readonly capture: number;
  /** Donors when mixed plants are counted too. */
  readonly withMixed: MixedBounds;
}

/** The frequency that collecting guides take for "not rare": Brown & Marshall 1995. */
const COMMON_ALLELE = 0.05;

/**
 * Diversity of one stand's plants, stage by stage.
 *
 * Which plants is the caller's choice: those on hand now, or those of a season
 * that reached the stage. Only ever one stand and taxon at a time: donors of
 * two stands in one figure would hide the loss of either.
 *
 * @returns the four stages in order; one without plants has 0 donors and no shares
 * @throws DomainError `diversity/not-a-count`, `diversity/no-candidates` as `mixedBounds`
 *
 * Source: each figure's own function names it.
 */
export function diversityOfStand(rows: readonly StandPlants[]): readonly StageDiversity[] {
  return STAGES.map((stage) => diversityAt(stage, rows.filter((row) => row.stage === stage)));
}

function diversityAt(stage: Stage, rows: readonly StandPlants[]): StageDiversity {
  const plantsOf = new Map<string, number>();
  const mixed: MixedBatch[] = [];
  for (const row of rows) {
    if ('candidates' in row) mixed.push(row);
    else plantsOf.set(row.donorId, (plantsOf.get(row.donorId) ?? 0) + counted(row.plants));
  }
  const present = [...plantsOf].filter(([, plants]) => plants > 0);
  return {
    stage,
    donors: present.length,
    perDonor: present.map(([, plants]) => plants).toSorted((a, b) => b - a),
    ...sharesOf(present),
    mixedPlants: mixed.reduce((sum, { plants }) => sum + plants, 0),
    capture: alleleCapture(present.length, COMMON_ALLELE),
    withMixed: mixedBounds(new Set(present.map(([donorId]) => donorId)), mixed),
  };
}

/** Asked row by row, since a negative one could hide in a sum. */
function counted(plants: number): number {
  if (!isCount(plants)) throw new DomainError('diversity/not-a-count', 'plants are a whole number', { plants });
  return plants;
}

function sharesOf(
  present: ReadonlyArray<readonly [donorId: string, plants: number]>,
): Pick<StageDiversity, 'plants' | 'effective' | 'largest'> {
  const [largest] = present.toSorted(([idA, a], [idB, b]) => b - a || (idA < idB ? -1 : 1));
  if (largest === undefined) return { plants: 0 };

  const [donorId, most] = largest;
  const counts = present.map(([, plants]) => plants);
  return {
    plants: totalPlants(counts),
    effective: effectiveDonors(counts),
    largest: { donorId, plants: most, share: largestShare(counts) },
  };
}
