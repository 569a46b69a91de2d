import type { Prior } from '../planning/varying-chance-fit.ts';
import { SPECIES_TABLE } from './species-table.ts';

/** Lowest and highest, both included. */
export type Range = readonly [lower: number, upper: number];

/** What has been published on cuttings of one species, or of a genus where `name` is one word. */
export interface SpeciesRow {
  readonly name: string;
  /** A conifer of which nothing can be said before half a year has passed. */
  readonly isSlow: boolean;
  readonly lengthCm?: Range;
  /** Strength of rooting hormone as talc or quick dip, milligrams in a litre or kilogram. */
  readonly ppm?: Range;
  /** What the medium is made of, as one of the words of `ingredientsOf`. */
  readonly medium?: readonly string[];
  readonly lightHours?: Range;
  /** First roots were seen after so many days. */
  readonly firstRootsDays?: number;
  /** Shares that rooted. */
  readonly rooting?: Range;
  readonly source: string;
}

/** The row of a species, else that of its genus, else nothing: what is not in the table has no evidence there. */
export function speciesRow(scientificName: string): SpeciesRow | undefined {
  const [genus = '', species = ''] = scientificName.trim().split(/\s+/);
  const named = (name: string) => SPECIES_TABLE.find((row) => row.name.toLowerCase() === name.toLowerCase());
  return named(`${genus} ${species}`) ?? named(genus);
}

export interface RootingPrior extends Prior {
  readonly basis: 'species-row' | 'common-practice';
  readonly source: string;
}

/** Cuttings' worth that a prior weighs: a tray of own cuttings says more. A working rule. */
const PRIOR_PLANTS = 20;
/** As far apart as the trees of six wild stands of Pacific yew (6 to 88 % of a tree's cuttings): Mitchell AK 1997. */
const PRIOR_LIKENESS = 0.17;
/** Where nothing is published: wild evergreens of unknown age. A working rule, no figure of a paper. */
const UNKNOWN_SHARE = 0.4;

/** The chance of a cutting to root that is held before the programme has figures of its own. */
export function rootingPrior(row: SpeciesRow | undefined): RootingPrior {
  const held = { likeness: PRIOR_LIKENESS, plants: PRIOR_PLANTS };
  if (row?.rooting === undefined) return { ...held, mean: UNKNOWN_SHARE, basis: 'common-practice', source: '' };
  const [lower, upper] = row.rooting;
  return { ...held, mean: (lower + upper) / 2, basis: 'species-row', source: row.source };
}
