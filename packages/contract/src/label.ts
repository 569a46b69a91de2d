import { z } from 'zod';
import { LabelCode, Stage } from './entry/words.ts';
import { Day, Id, PageQuery, ProgrammePath, Words } from './shapes.ts';

export const LabelPath = ProgrammePath.extend({ code: LabelCode });
export type LabelPath = z.infer<typeof LabelPath>;

export const Labelled = z.enum(['batch', 'donorTree', 'place']);
export type Labelled = z.infer<typeof Labelled>;

/** Answer of GET labels/:code: what bears it. */
export const Label = z.object({
  code: z.string(),
  /** `unclaimed`: printed on a roll, and nobody has said yet what it is on. */
  is: z.enum([...Labelled.options, 'unclaimed']),
  /** Of the batch, the donor tree or the place; while it is unclaimed, of its roll. */
  id: z.uuid(),
  /** When it was put there; null while it is unclaimed. */
  givenAt: z.string().nullable(),
});
export type Label = z.infer<typeof Label>;

/** Body of POST labels: what a code is on. A drawn code, or whatever somebody wrote on a label that was never used. */
export const GiveLabel = z
  .strictObject({ code: LabelCode, batchId: Id.optional(), donorTreeId: Id.optional(), placeId: Id.optional() })
  .refine(({ batchId, donorTreeId, placeId }) => [batchId, donorTreeId, placeId].filter((id) => id !== undefined).length === 1, {
    error: 'name one batch, or one donor tree, or one place',
  });
export type GiveLabel = z.infer<typeof GiveLabel>;

/** So many codes are drawn at once: two thousand are forty metres of labels. */
export const MOST_ON_A_ROLL = 2_000;

/** Body of POST label-rolls. */
export const NewLabelRoll = z.strictObject({ id: Id, name: Words, n: z.int().min(1).max(MOST_ON_A_ROLL) });
export type NewLabelRoll = z.infer<typeof NewLabelRoll>;

/** A roll in a list, with sums instead of codes. */
export const LabelRollInList = z.object({
  id: z.uuid(),
  name: z.string(),
  madeBy: z.uuid(),
  madeAt: z.string(),
  codes: z.int(),
  /** Of them so many that nobody has put on anything yet. */
  unclaimed: z.int(),
});
export type LabelRollInList = z.infer<typeof LabelRollInList>;

export const LabelRoll = LabelRollInList.omit({ codes: true }).extend({
  /** Along the roll. What each became is null while it is unclaimed. */
  codes: z.array(z.object({ number: z.int(), code: z.string(), on: z.object({ is: Labelled, id: z.uuid(), givenAt: z.string() }).nullable() })),
});
export type LabelRoll = z.infer<typeof LabelRoll>;

export const LabelRollQuery = PageQuery;
export type LabelRollQuery = z.infer<typeof LabelRollQuery>;

const LabelsOf = z.enum(['batches', 'donorTrees', 'places']);

/** Labels of what: all that stands in a place, the trees of a stand, or some by their ids. */
export const LabelChoice = z.strictObject({
  of: LabelsOf,
  /** What stands there, and in all that lies in it; of places, it and all that lies in it. */
  placeId: Id.optional(),
  standId: Id.optional(),
  ids: z.array(Id).max(500).optional(),
});
export type LabelChoice = z.infer<typeof LabelChoice>;

/** The same in an address, ids with commas between them. */
export const LabelQuery = LabelChoice.extend({
  ids: z.string().regex(/^[0-9a-f-]{36}(,[0-9a-f-]{36}){0,199}$/, { error: 'must be up to 200 ids with commas between them' }).optional(),
});
export type LabelQuery = z.infer<typeof LabelQuery>;

/** What one label says. What a thing doesn't have, or what nobody knows, is null. */
export const LabelLine = z.object({
  is: Labelled,
  id: z.uuid(),
  /** Its newest label; null while it has none. */
  code: z.string().nullable(),
  /** Of the tree itself, or the tree that the plants are of. */
  donorTree: z.string().nullable(),
  taxon: z.string().nullable(),
  stand: z.string().nullable(),
  stage: Stage.nullable(),
  stuckOn: Day.nullable(),
  /** Since when plants are of this batch. */
  openedOn: Day.nullable(),
  /** Names of the places, the outermost first: where it stands, or of the place itself. */
  path: z.array(z.string()),
});
export type LabelLine = z.infer<typeof LabelLine>;
