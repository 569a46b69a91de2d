import type { Diversity, DonorHolding, Funnels } from '@sprigline/contract';
import { csvOf } from '../http/csv.ts';

/** Headings say what stands below them, and in what unit; shares are between 0 and 1. */
export const funnelsAsCsv = ({ groups, asOf, rootedMeans }: Funnels): string =>
  csvOf(
    ['group', 'species', 'stage', 'plants reached', 'went on', 'died', 'unaccounted', 'not rooted', 'thrown out', 'given out', 'stuck again', 'gone into mixed batches', 'here', 'of those not found',
      'donors reached', 'donors here', 'donors left here or later', 'settled rate', 'undecided share', 'if none of the rest', 'if all of the rest', 'Wilson lower', 'Wilson upper',
      'by donor lower', 'by donor upper', 'as of', 'rooted means'],
    groups.flatMap(({ name, taxon, stages }) =>
      stages.map((stage) => [
        name, taxon ?? undefined, stage.stage, stage.reached, stage.goneOn, sumOf(stage.died), stage.unaccounted, stage.notRooted, stage.thrownOut, stage.givenOut, stage.restuck, stage.mixedAway,
        stage.here, stage.notFound, stage.donors.reached, stage.donors.here, stage.donors.left, stage.survival?.rate, stage.survival?.undecidedShare,
        stage.survival?.range.lower, stage.survival?.range.upper, stage.wilson?.lower, stage.wilson?.upper,
        ...(stage.byDonor?.kind === 'interval' ? [stage.byDonor.lower, stage.byDonor.upper] : [undefined, undefined]), asOf, rootedMeans,
      ]),
    ),
  );

export const diversityAsCsv = ({ stands, asOf }: Diversity): string =>
  csvOf(
    ['stand', 'species', 'stage', 'donors here', 'plants', 'plants of mixed batches', 'effective donors order 1', 'effective donors order 2', 'largest donor', 'largest share',
      'chance of an allele of frequency 0.05', 'donors at least', 'donors expected', 'donors at most', 'donor trees known', 'as of'],
    stands.flatMap(({ stand, taxon, donorTrees, stages }) =>
      stages.map((stage) => [
        stand, taxon, stage.stage, stage.donors, stage.plants, stage.mixedPlants, stage.effective?.order1, stage.effective?.order2, stage.largest?.label, stage.largest?.share,
        stage.capture, stage.withMixed.atLeast, stage.withMixed.expected, stage.withMixed.atMost, donorTrees, asOf,
      ]),
    ),
  );

/** Nothing under "rooted plants now": there are plants, and nobody told how many are rooted. */
export const donorsAsCsv = (donors: readonly DonorHolding[], asOf: string): string =>
  csvOf(
    ['donor tree', 'stand', 'species', 'rooted plants now', 'rooted plants ever', 'plants', 'places', 'wild tree', 'risks', 'as of'],
    donors.map((donor) => [
      donor.label, donor.stand, donor.taxon, donor.rootedNow ?? undefined, donor.rootedEver, donor.plants, donor.places, donor.wildTree, donor.risks.join('; '), asOf,
    ]),
  );

const sumOf = (died: Readonly<Record<string, number>>): number => Object.values(died).reduce((sum, n) => sum + n, 0);
