import { z } from 'zod';
import { GroupBy, ReadingFilter } from './reading.ts';

/** What curves are told apart by: as funnels are, by a part of the recipe, or by the bench they were stuck on. These four may hold several species. */
export const CurveBy = z.enum([...GroupBy.options, 'hormone', 'medium', 'wound', 'place']);
export type CurveBy = z.infer<typeof CurveBy>;

/** Never two species in one curve, unless somebody asks for all. */
export const CurveQuery = ReadingFilter.extend({ by: CurveBy.default('taxon') });
export type CurveQuery = z.infer<typeof CurveQuery>;

const Share = z.number().min(0).max(1);
/** Weeks since sticking; limits where they can be told. */
const Weeks = z.object({ week: z.number(), lower: z.number().optional(), upper: z.number().optional() });

/** How long cuttings take to root: shares of all that were stuck, week by week since sticking. */
export const RootingCurve = z.object({
  key: z.string(), name: z.string(),
  /** Where all its stickings share them. */
  standId: z.string().nullable(), taxonId: z.string().nullable(),
  /** Of donor trees those that are known; `cuttings` are all that were followed. */
  stickings: z.int(), donors: z.int(), cuttings: z.int(),
  /** What has become of them. Called: nobody will know. Left: given out, stuck again, mixed. */
  rooted: z.int(), lost: z.int(), called: z.int(), left: z.int(), waiting: z.int(),
  /** Of all but those that left: neither rooted nor lost nor called. Above a half, nothing is ranked. */
  undecidedShare: Share,
  /** Came under observation later than they were stuck: received, found. */
  cameLate: z.int(),
  /** `intervals`: between looks. `days-seen`: on the day on which it was seen, as where plants came late. */
  method: z.enum(['intervals', 'days-seen']),
  isConverged: z.boolean(),
  /** Limits by `cuttings` do not know that cuttings of one tree fare together: they are too narrow. */
  limitsBy: z.enum(['donors', 'cuttings']),
  /** The share rose after `since` and by `week`; in between nobody looked. */
  steps: z.array(z.object({ since: z.number(), week: z.number(), rooted: Share, lower: Share.optional(), upper: Share.optional(), lost: Share })),
  /** Cuttings that waited and were watched after so many weeks. */
  watched: z.array(z.object({ week: z.int(), cuttings: z.int() })),
  /** Half of those that root, as far as it was seen, have roots; and half of all. */
  halfOfRooting: Weeks.optional(),
  halfOfAll: Weeks.optional(),
  /** Days after sticking on which roots were seen first of all. */
  firstRootsAfterDays: z.int().nullable(),
});
export type RootingCurve = z.infer<typeof RootingCurve>;

export const RootingCurves = z.object({
  asOf: z.string(), rootedMeans: z.string(),
  /** The groups with the most cuttings, of so many. */
  inAll: z.int(), groups: z.array(RootingCurve),
  /** Whether some groups root sooner, each compared within its donor trees; or why that is not told. */
  difference: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('told'), chiSquare: z.number(), freedom: z.int(), chance: Share }),
    z.object({ kind: z.literal('not-told'), because: z.enum(['one-group', 'under-half-decided', 'no-tree-in-two-groups']) }),
  ]),
});
export type RootingCurves = z.infer<typeof RootingCurves>;
