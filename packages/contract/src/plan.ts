import { z } from 'zod';
import { AgeClass } from './donor-tree.ts';
import { Wood } from './entry/words.ts';
import { ExpectedNumber, Opinion, RootingChance, SpeciesRead } from './second-opinion.ts';
import { Day, Id, orNothing, PageQuery, Prose, ThingPath, Words } from './shapes.ts';

/** What is to be stuck in a season. Body of PUT. */
export const PlanContent = z.strictObject({
  name: Words,
  /** Year in which the season begins: 2027 for the season 2027/28. */
  season: z.int({ error: 'must be a year such as 2027' }).min(1900, { error: 'must be a year such as 2027' }).max(2999, { error: 'must be a year such as 2027' }),
  note: orNothing(Prose),
});
export type PlanContent = z.infer<typeof PlanContent>;

export const NewPlan = PlanContent.extend({ id: Id });
export type NewPlan = z.infer<typeof NewPlan>;

/** So many plants, of so many donor trees of one stand, at one site. Body of PUT, which works the figures out anew. */
export const PlanTargetContent = z.strictObject({
  standId: Id,
  taxonId: Id,
  /** Where they are to be planted; empty: not decided. */
  siteId: orNothing(Id),
  /** Counted once they have come to this stage. */
  stage: z.enum(['liner', 'potted', 'planted']).default('planted'),
  plants: z.int({ error: 'must be a whole number of plants' }).min(1, { error: 'must be at least 1' }).max(2_000, { error: 'at most 2,000 of one stand: divide it over several plans' }),
  donors: z.int({ error: 'must be a whole number of donor trees' }).min(1, { error: 'must be at least 1' }).max(60, { error: 'at most 60 donor trees of one stand' }),
  /** So sure one wants to be of reaching both. */
  confidence: z.number({ error: 'must be a share such as 0.8' }).min(0.5).max(0.99).multipleOf(0.01).default(0.8),
  /** Cut from so many donor trees at most; empty: from all that can be cut, up to 60. */
  mostTrees: orNothing(z.int().min(1).max(60)),
  /** The day on which they are to be stuck; empty: not decided. */
  stickOn: orNothing(Day),
  recipeVersionId: orNothing(Id),
  /** Half of each tree's cuttings under this one, to compare. */
  otherRecipeVersionId: orNothing(Id),
  lengthCm: orNothing(z.number().min(0.1).max(500).multipleOf(0.1)),
  wood: orNothing(Wood),
  lightHours: orNothing(z.number().gt(0).max(24).multipleOf(0.25)),
  /** Into how many trays or houses each tree's cuttings will be divided. */
  placesPerDonor: orNothing(z.int().min(1).max(50)),
});
export type PlanTargetContent = z.infer<typeof PlanTargetContent>;

export const NewPlanTarget = PlanTargetContent.extend({ id: Id });
export type NewPlanTarget = z.infer<typeof NewPlanTarget>;

const Share = z.number().min(0).max(1);
const Stage = z.enum(['cutting', 'liner', 'potted', 'planted']);

/** A donor tree (clone group) to cut from, and how many of it to stick. */
export const PlannedTree = z.object({
  donorId: z.string(), treeId: z.string(), label: z.string(),
  ageYears: z.int().nullable(), ageClass: AgeClass.nullable(),
  /** Cut last on that day. */
  cutOn: Day.nullable(),
  /** Living plants of it now, at every stage. */
  plantsHere: z.int(),
  cuttings: z.int(),
  /** Of them under the second recipe. */
  ofOther: z.int(),
});
export type PlannedTree = z.infer<typeof PlannedTree>;

/** A step after rooting: own plants that went on, of those whose end is known, drawn towards what is usual. */
export const PlanStep = z.object({ from: Stage, rate: Share, goneOn: z.int(), settled: z.int(), prior: Share });
export type PlanStep = z.infer<typeof PlanStep>;

const Bet = z.object({ trees: z.int(), cuttingsPerDonor: z.int(), cuttings: z.int(), /** Of reaching both targets. */ chance: Share, expectedPlants: z.number(), expectedDonors: z.number(), capture: Share });

/** What to stick, as worked out on a day from the figures of that day. */
export const PlanAnswer = z.object({
  rooting: RootingChance,
  steps: z.array(PlanStep),
  /** Of a cutting to come to the stage that is counted. */
  toEnd: z.object({ mean: Share, likeness: Share }),
  /** Donor trees of the stand that can be cut, chosen or not. */
  treesInAll: z.int(),
  trees: z.array(PlannedTree),
  /** Why there is no answer: a refusal of the numbers, such as `planning/too-few-trees`. */
  refused: z.string().nullable(),
  /** As planned, with one more tree, with as many more cuttings of the same trees. */
  bets: z.object({ asPlanned: Bet, oneMoreTree: Bet, moreCuttings: Bet }).nullable(),
  /** With four in five, at the stage that is counted. */
  expected: z.object({ plants: ExpectedNumber, donors: ExpectedNumber }).nullable(),
  /** What is needed on average, half of all years: rounded up once, and at each stage, with what each stage has to begin with. */
  needed: z.object({ once: z.int(), eachStage: z.int(), stages: z.array(z.object({ stage: Stage, plants: z.int() })) }).nullable(),
  species: SpeciesRead,
  opinions: z.array(Opinion),
  firstCheckDays: z.int(),
  verdictDays: z.int(),
});
export type PlanAnswer = z.infer<typeof PlanAnswer>;

const Named = z.object({ id: z.uuid(), name: z.string() });

export const PlanTarget = z.object({
  ...PlanTargetContent.shape,
  id: Id,
  stand: Named, taxon: Named, site: Named.nullable(),
  recipe: z.string().nullable(), otherRecipe: z.string().nullable(),
  /** The day whose figures it was worked out from. */
  figuresOn: Day,
  answer: PlanAnswer,
});
export type PlanTarget = z.infer<typeof PlanTarget>;

export const Plan = z.object({ ...PlanContent.shape, id: Id, /** As the programme names its seasons. */ seasonName: z.string(), madeBy: z.string(), madeAt: z.iso.datetime(), targets: z.array(PlanTarget) });
export type Plan = z.infer<typeof Plan>;

/** A plan in a list, newest season first. */
export const PlanInList = z.object({ id: Id, name: z.string(), seasonName: z.string(), targets: z.int(), plants: z.int(), cuttings: z.int() });
export type PlanInList = z.infer<typeof PlanInList>;

export const PlanQuery = PageQuery;
export type PlanQuery = z.infer<typeof PlanQuery>;

export const PlanTargetPath = ThingPath.extend({ targetId: Id });
export type PlanTargetPath = z.infer<typeof PlanTargetPath>;

/** A link that shows the plan to people outside, without saying where donor trees stand. */
export const MakePlanShare = z.strictObject({
  id: Id,
  /** For whom, so that it is known which link to close. They are not told. */
  forName: Words,
  days: z.int({ error: 'must be a number of days, 1 to 90' }).min(1, { error: 'must be a number of days, 1 to 90' }).max(90, { error: 'must be a number of days, 1 to 90' }).default(14),
});
export type MakePlanShare = z.infer<typeof MakePlanShare>;

export const PlanShare = z.object({ id: Id, forName: z.string(), madeBy: z.string(), madeAt: z.iso.datetime(), expiresAt: z.iso.datetime(), state: z.enum(['open', 'revoked', 'expired']) });
export type PlanShare = z.infer<typeof PlanShare>;

export const PlanSharePath = ThingPath.extend({ shareId: Id });
export type PlanSharePath = z.infer<typeof PlanSharePath>;

/** What outside people see of one target: no place, no label, no name of anybody. */
export const SharedTarget = PlanTarget.pick({ stage: true, plants: true, donors: true, confidence: true, stickOn: true, lengthCm: true, wood: true, lightHours: true, placesPerDonor: true, figuresOn: true }).extend({
  /** Only of a stand whose place is no secret; else null. */
  stand: z.string().nullable(),
  taxon: z.string(),
  medium: z.string().nullable(), hormone: z.string().nullable(), hormonePpm: z.int().nullable(),
  /** Trees are numbered: a label may tell a stand by its first letters. Ages in years are left out, too. */
  answer: PlanAnswer.omit({ trees: true }).extend({ trees: z.array(z.object({ number: z.int(), age: z.enum(['few-years', 'to-ten', 'to-hundred', 'over-hundred']).nullable(), cuttings: z.int(), ofOther: z.int() })) }),
});
export type SharedTarget = z.infer<typeof SharedTarget>;

export const SharedPlan = z.object({ programme: z.string(), seasonName: z.string(), rootedMeans: z.string(), expiresAt: z.iso.datetime(), targets: z.array(SharedTarget) });
export type SharedPlan = z.infer<typeof SharedPlan>;
