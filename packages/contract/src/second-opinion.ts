import { z } from 'zod';
import { Day } from './shapes.ts';

/** What an opinion rests on; `no-evidence`: nothing speaks, so nothing is called unusual. */
export const OpinionBasis = z.enum(['species-row', 'own-history', 'common-practice', 'no-evidence']);
export type OpinionBasis = z.infer<typeof OpinionBasis>;

const Share = z.number().min(0).max(1);
/** Own cuttings whose end is known: so many went on, of so many, of so many donor trees. */
const OwnShare = z.object({ goneOn: z.int(), settled: z.int(), donors: z.int() });

/** One thing that was looked at. It warns and never blocks. */
export const Opinion = z.object({
  about: z.enum(['length', 'medium', 'hormone', 'light', 'donor-age', 'stripped', 'places', 'donors', 'comparison', 'first-check', 'verdict']),
  verdict: z.enum(['unusual', 'usual', 'no-evidence', 'not-told']),
  basis: OpinionBasis,
  /** What of it, such as `above`. */
  says: z.string(),
  /** Labels of the donor trees it concerns; none: all alike. */
  donors: z.array(z.string()),
  facts: z.record(z.string(), z.union([z.number(), z.string()])),
  /** What own cuttings did that were like this, and those that were not. */
  like: OwnShare.optional(),
  unlike: OwnShare.optional(),
});
export type Opinion = z.infer<typeof Opinion>;

/** A number to come: expected, and from here to here with four in five. */
export const ExpectedNumber = z.object({ expected: z.number(), lower: z.int(), upper: z.int() });
export type ExpectedNumber = z.infer<typeof ExpectedNumber>;

/** Chance of a cutting to root and go on, and what it rests on. */
export const RootingChance = z.object({
  mean: Share,
  /** How alike cuttings of one donor tree fare: 0 as they like, near 1 a tree roots wholly or not at all. */
  likeness: Share,
  /** The programme's own cuttings whose end is known, and of how many donor trees. */
  goneOn: z.int(), settled: z.int(), donors: z.int(),
  /** Share of the weight that is the programme's own. */
  ownWeight: Share,
  prior: z.object({ mean: Share, plants: z.number(), basis: z.enum(['species-row', 'common-practice']), source: z.string() }),
});
export type RootingChance = z.infer<typeof RootingChance>;

/** The row of the species table that was read, with its source; null where neither species nor genus stands in it. */
export const SpeciesRead = z.object({ name: z.string(), source: z.string() }).nullable();

const Named = z.object({ id: z.uuid(), name: z.string() });

/** Cuttings of one stand and species, stuck on one day. */
export const StickingOpinion = z.object({
  stand: Named.nullable(),
  taxon: Named,
  stuckOn: Day,
  cuttings: z.int(),
  donors: z.int(),
  species: SpeciesRead,
  opinions: z.array(Opinion),
  chance: RootingChance,
  /** Rooted plants, and donor trees with one at least. */
  expected: z.object({ plants: ExpectedNumber, donors: ExpectedNumber }),
  firstCheckOn: Day,
  /** By then an honest verdict is possible. */
  verdictOn: Day,
});
export type StickingOpinion = z.infer<typeof StickingOpinion>;

/** One for each stand, species and day among what was asked about. */
export const SecondOpinion = z.object({ groups: z.array(StickingOpinion) });
export type SecondOpinion = z.infer<typeof SecondOpinion>;
