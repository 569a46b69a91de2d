import { z } from 'zod';
import { Stage } from './entry/words.ts';
import { Id, PageQuery } from './shapes.ts';

/** Which stickings a reading is of. All given ones must hold; kept in the address of the page. */
export const ReadingFilter = z.strictObject({
  standId: Id.optional(),
  taxonId: Id.optional(),
  donorTreeId: Id.optional(),
  recipeId: Id.optional(),
  ageClass: z.enum(['juvenile', 'young', 'mature', 'old']).optional(),
  /** Place whose plants are meant, with all that lies in it; stickings with a batch that stands there now. */
  placeId: Id.optional(),
  /** Year in which the season began: 2024 for the season 2024/25. */
  season: z.coerce.number().int().min(1900).max(2999).optional(),
});
export type ReadingFilter = z.infer<typeof ReadingFilter>;

/** What a page of funnels is told apart by. */
export const GroupBy = z.enum(['all', 'stand', 'taxon', 'season', 'recipe', 'donor', 'ageClass']);
export type GroupBy = z.infer<typeof GroupBy>;

/** The groups come in parts, by name; the next part stands in `Link`. */
export const FunnelQuery = ReadingFilter.extend({ by: GroupBy.default('all'), ...PageQuery.shape });
export type FunnelQuery = z.infer<typeof FunnelQuery>;

const Share = z.number().min(0).max(1);
const Interval = z.object({ lower: Share, upper: Share });
/** `treeId` is the page to look at: of donor trees that are one clone, the first by label. */
const Donor = { donorId: z.string(), treeId: z.string(), label: z.string() };
const DonorRate = z.object({ ...Donor, successes: z.int(), plants: z.int(), rate: Share });

/** How donors differ: an interval with five donors or more, else the best and the worst. */
export const DonorSpread = z.discriminatedUnion('kind', [
  Interval.extend({ kind: z.literal('interval'), rate: Share, standardError: z.number(), designEffect: z.number(), donors: z.int() }),
  z.object({ kind: z.literal('best-and-worst'), because: z.enum(['few-donors', 'donors-all-alike']), donors: z.int(), best: DonorRate, worst: DonorRate }),
]);
export type DonorSpread = z.infer<typeof DonorSpread>;

const Settled = z.object({
  goneOn: z.int(), settled: z.int(), undecided: z.int(), undecidedShare: Share, leftWithoutVerdict: z.int(),
  rate: Share.optional(), range: Interval, needsRange: z.boolean(), isRankable: z.boolean(),
});

/** One stage of the paired funnel: plants on one side, donors on the other. */
export const FunnelStage = z.object({
  stage: Stage,
  reached: z.int(), goneOn: z.int(), died: z.record(z.string(), z.int()), unaccounted: z.int(), notRooted: z.int(),
  thrownOut: z.int(), givenOut: z.int(), restuck: z.int(), mixedAway: z.int(), here: z.int(), notFound: z.int(),
  /** `left`: of those that came so far, the ones that still have a plant, here or later. */
  donors: z.object({ reached: z.int(), here: z.int(), left: z.int() }),
  survival: Settled.optional(),
  wilson: Interval.optional(),
  byDonor: DonorSpread.optional(),
});
export type FunnelStage = z.infer<typeof FunnelStage>;

/** The day on which a reading was taken, in the programme's zone. */
const reading = { asOf: z.string(), /** What this programme calls rooted; printed with every rate. */ rootedMeans: z.string() };

export const FunnelGroup = z.object({
  key: z.string(), name: z.string(),
  /** Where all its stickings share them; a stand of two species makes two groups. */
  standId: z.string().nullable(), taxonId: z.string().nullable(), taxon: z.string().nullable(), commonName: z.string().nullable(),
  /** Days of the first and the last sticking; empty where no sticking day is known. */
  firstStuckOn: z.string().nullable(), lastStuckOn: z.string().nullable(),
  /** The day by which the last cuttings that are undecided now have their verdict; null where none are, or no day is known. */
  verdictOn: z.string().nullable(),
  /** Of all stages together; a donor whose plants were received at a later stage is among them. */
  donors: z.object({ came: z.int(), left: z.int() }),
  stages: z.array(FunnelStage),
});
export type FunnelGroup = z.infer<typeof FunnelGroup>;

export const Funnels = z.object({ ...reading, groups: z.array(FunnelGroup) });
export type Funnels = z.infer<typeof Funnels>;

export const StageDiversity = z.object({
  stage: Stage,
  donors: z.int(), plants: z.int(), mixedPlants: z.int(),
  /** Plants of each known donor, most first. */
  perDonor: z.array(z.int()),
  effective: z.object({ order1: z.number(), order2: z.number() }).optional(),
  largest: z.object({ ...Donor, plants: z.int(), share: Share }).optional(),
  /** Chance that an allele of frequency 0.05 is held. */
  capture: Share,
  withMixed: z.object({ atLeast: z.number(), expected: z.number(), atMost: z.number() }),
});
export type StageDiversity = z.infer<typeof StageDiversity>;

export const Diversity = z.object({
  ...reading,
  /** Donor trees taken to be distinct, for want of evidence. */
  stands: z.array(z.object({
    standId: z.string(), stand: z.string(), taxonId: z.string(), taxon: z.string(), commonName: z.string().nullable(),
    /** Donor trees known in the stand, stuck from or not. */
    donorTrees: z.int(), assumedDistinct: z.int(),
    stages: z.array(StageDiversity),
  })),
});
export type Diversity = z.infer<typeof Diversity>;

export const Risk = z.enum(['none-rooted', 'few-rooted', 'falling', 'one-place', 'last-copies', 'perhaps-last-copies']);
export type Risk = z.infer<typeof Risk>;

/** What is left of one donor: a tree, or several that are one clone. */
export const DonorHolding = z.object({
  ...Donor,
  stand: z.string(), standId: z.string(), taxon: z.string(), commonName: z.string().nullable(),
  /** Rooted plants at every stage together; null while there are plants and nobody told how many are rooted. */
  rootedNow: z.int().nullable(),
  rootedEver: z.int(),
  /** Plants here now, rooted or not. */
  plants: z.int(),
  places: z.int(), wildTree: z.enum(['standing', 'notSeen', 'dead', 'unknown']), risks: z.array(Risk),
});
export type DonorHolding = z.infer<typeof DonorHolding>;

/** So many rooted plants or fewer are few. */
const fewRooted = z.int();

export const DonorsAtRisk = z.object({
  ...reading,
  fewRooted,
  /** Of how many these are a part; the next part stands in `Link`. */
  inAll: z.int(),
  donors: z.array(DonorHolding),
  /** Donors with plants here of which nobody has told how many are rooted. */
  notTold: z.int(),
});
export type DonorsAtRisk = z.infer<typeof DonorsAtRisk>;

/** Every donor of which something was stuck or received: fewest rooted plants first, those not told last. */
export const DonorHoldings = z.object({ ...reading, fewRooted, inAll: z.int(), donors: z.array(DonorHolding) });
export type DonorHoldings = z.infer<typeof DonorHoldings>;

/** What can be chosen in the filters of a reading page. */
export const ReadingChoices = z.object({
  stands: z.array(z.object({ id: z.string(), name: z.string() })),
  taxa: z.array(z.object({ id: z.string(), name: z.string() })),
  recipes: z.array(z.object({ id: z.string(), name: z.string() })),
  /** Trays are too many to choose from. */
  places: z.array(z.object({ id: z.string(), name: z.string() })),
  seasons: z.array(z.object({ year: z.int(), name: z.string() })),
});
export type ReadingChoices = z.infer<typeof ReadingChoices>;
