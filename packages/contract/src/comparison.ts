import { z } from 'zod';
import { DonorSpread, ReadingFilter } from './reading.ts';
import { Day } from './shapes.ts';

/** What is compared: recipes as a whole, or by one of their parts; or where the cuttings came from, stood and when. */
export const CompareBy = z.enum(['recipe', 'hormone', 'medium', 'wound', 'ageClass', 'taxon', 'stand', 'season', 'place']);
export type CompareBy = z.infer<typeof CompareBy>;

/** Something else that groups may differ in, and that a comparison can allow for. */
export const AllowFor = z.enum(['season', 'ageClass', 'taxon', 'stand', 'place']);
export type AllowFor = z.infer<typeof AllowFor>;

/** A group by its key, as an answer names it. */
const Key = z.string().max(500);

/**
 * Which cuttings, and by what they are told apart. Where plants stand now is no choice here: it would keep the survivors.
 */
export const ComparisonQuery = ReadingFilter.omit({ placeId: true }).extend({
  by: CompareBy.default('recipe'),
  /** The group that the others are compared with; left out, the one with most cuttings decided. */
  against: Key.optional(),
  allowFor: AllowFor.optional(),
});
export type ComparisonQuery = z.infer<typeof ComparisonQuery>;

const Share = z.number().min(0).max(1);
const Interval = z.object({ lower: Share, upper: Share });

const named = {
  key: z.string(),
  /** Empty where it is not told; such a group is shown and not compared. */
  name: z.string(),
  /** Where hormones are compared: what it is made of. Null where none is used. */
  hormone: z.object({ name: z.string(), ppm: z.int().nullable(), form: z.enum(['talc', 'quickDip', 'soak', 'gel']).nullable() }).nullable(),
};

export const ComparedGroup = z.object({
  ...named,
  firstStuckOn: Day.nullable(), lastStuckOn: Day.nullable(),
  /** Cuttings that were stuck, and where they are: gone on with roots, lost, waiting for their verdict, or left without one. */
  cuttings: z.int(), rooted: z.int(), lost: z.int(), undecided: z.int(), leftWithoutVerdict: z.int(),
  donors: z.int(), trays: z.int(), days: z.int(),
  /** Cuttings of which the donor tree is not known. */
  ofUnknownDonor: z.int(),
  /** Rooted of rooted and lost; null while nothing is decided. */
  share: Share.nullable(),
  /** The share if none of the undecided root, and if all do. */
  range: Interval.nullable(),
  needsRange: z.boolean(), isRankable: z.boolean(),
  wilson: Interval.nullable(),
  byDonor: DonorSpread.nullable(),
  /** How many times as much donor trees differ as chance alone would have them; null where that can't be told. */
  donorsDiffer: z.object({ factor: z.number(), chance: Share }).nullable(),
  /** The day by which its last cuttings have their verdict; null where none wait. */
  verdictOn: Day.nullable(),
});
export type ComparedGroup = z.infer<typeof ComparedGroup>;

export const Nuisance = z.enum(['donor', 'tray', 'bench', 'day', 'team', 'recipe', 'stand', 'species']);
export type Nuisance = z.infer<typeof Nuisance>;

export const TrialAdvice = z.enum([
  'each-donor-in-both', 'several-trays-each', 'both-on-each-bench', 'both-on-each-day', 'both-by-each-team', 'one-recipe-for-both', 'same-stands-in-both', 'one-species', 'stick-both',
]);
export type TrialAdvice = z.infer<typeof TrialAdvice>;

/** A figure and its limits: more (or, below 0, fewer) of one cutting. */
const Difference = z.object({ difference: z.number().min(-1).max(1), lower: z.number().min(-1).max(1), upper: z.number().min(-1).max(1) });

/** One group compared with another. */
export const ComparedPair = z.object({
  first: z.string(), second: z.string(),
  /** Too early: under half of either is decided. Mixed up: what differs between them is more than their name. */
  state: z.enum(['too-early', 'mixed-up', 'all-alike', 'not-told-apart', 'compared']),
  mixedUpWith: z.array(Nuisance),
  /** What nobody wrote down of one cutting in ten or more. */
  unknown: z.array(Nuisance),
  advice: z.array(TrialAdvice),
  /** The figures; null unless the state is `compared`. */
  found: z.object({
    by: z.enum(['one-tree', 'within-trees', 'between-trees', 'allowing-for']),
    ...Difference.shape,
    limitsBy: z.enum(['plants', 'donors']),
    /** Odds in the first over those in the second; null within it stands for without end. Null where no end was found. */
    odds: z.object({ ratio: z.number().nullable(), lower: z.number().nullable(), upper: z.number().nullable() }).nullable(),
    /** Chance of so large a difference or a larger one if there were none; and the same, allowing for all the pairs asked at once. */
    chance: Share.nullable(), chanceOfAll: Share.nullable(),
    donors: z.int(),
    /** Whether the books tell a difference: limits on one side of none, and a chance below 5 in 100 for all pairs at once. */
    isTold: z.boolean(),
  }).nullable(),
});
export type ComparedPair = z.infer<typeof ComparedPair>;

export const Comparison = z.object({
  asOf: Day, rootedMeans: z.string(),
  by: CompareBy, allowFor: AllowFor.nullable(),
  /** Cuttings stuck a second time: they failed before, so they are in no group. */
  secondTries: z.int(),
  /** Those with most cuttings decided first; the one that is not told last. */
  groups: z.array(ComparedGroup),
  /** The group that the others are compared with; null where there is none. */
  against: z.string().nullable(),
  pairs: z.array(ComparedPair),
});
export type Comparison = z.infer<typeof Comparison>;

/** Which trial: two groups of a comparison, and how often the dice are thrown anew. */
export const TrialQuery = ComparisonQuery.omit({ against: true, allowFor: true }).extend({ first: Key, second: Key, seed: z.coerce.number().int().min(0).max(1_000_000).default(1) });
export type TrialQuery = z.infer<typeof TrialQuery>;

/** How to lay out next year's trial of two groups, so that it can tell them apart. */
export const TrialLayout = z.object({
  first: z.object(named), second: z.object(named), seed: z.int(),
  /** Share rooted that it reckons with, how alike cuttings of one tree fare, and how many donor trees that rests on. */
  usual: z.object({ share: Share, likeness: Share, donors: z.int() }),
  /** The difference that the chances below are for, as a share. */
  toFind: z.number().min(-1).max(1),
  /** Cuttings of each donor tree for each of the two, and the chance to find the difference, with the error of simulating. */
  sizes: z.array(z.object({ cuttingsEach: z.int(), chance: Share, error: Share })),
  /** The smallest with a chance of 80 in 100; null where none of these has it. */
  cuttingsEach: z.int().nullable(),
  /** Donor trees that stand, and the order in which their halves are stuck; `first` or `second`. */
  blocks: z.array(z.object({ donor: z.string(), order: z.array(z.enum(['first', 'second'])) })),
});
export type TrialLayout = z.infer<typeof TrialLayout>;
