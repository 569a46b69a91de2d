import { z } from 'zod';
import { Day, Id, Words } from '../shapes.ts';
import { Container, Damaged, LabelCode, Medium, Plants, Rows, SomePlants, Stage, Wood } from './words.ts';

/** What a new batch is called and stands in; ignored where the batch is there already. */
const newBatch = { label: LabelCode.optional(), rows: Rows.optional(), container: Container.optional(), medium: Medium.optional() };

/** n cuttings put into medium under a recipe: opens a sticking and its batch. */
export const Stuck = z
  .strictObject({
    kind: z.literal('stuck'),
    batchId: Id,
    stickingId: Id,
    n: SomePlants,
    placeId: Id,
    bundleId: Id.optional(),
    /** Without a bundle (old sheets): the donor tree itself. */
    donorTreeId: Id.optional(),
    /** Cut from a nursery plant of that donor tree. */
    fromBatchId: Id.optional(),
    recipeVersionId: Id.optional(),
    damaged: z.array(Damaged).max(10).default([]),
    /** How hard the wood was; and of how many the bark was torn off all around. A second opinion asks for both. */
    wood: Wood.optional(),
    strippedAround: Plants.optional(),
    ...newBatch,
  })
  .refine(({ n, strippedAround = 0 }) => strippedAround <= n, { path: ['strippedAround'], error: 'must be no more than were stuck' })
  .refine((said) => [said.bundleId, said.donorTreeId, said.fromBatchId].filter(Boolean).length === 1, {
    path: ['bundleId'], error: 'name one of: bundle, donor tree, or the batch it was cut from',
  });

/** Plants that came in at a stage: opening stock, a return, from a partner, bought. */
export const Received = z.strictObject({
  kind: z.literal('received'),
  batchId: Id,
  stickingId: Id,
  stage: Stage,
  n: SomePlants,
  source: z.enum(['opening', 'return', 'partner', 'purchase']),
  donorTreeId: Id.optional(),
  /** Donor trees it may be of, while it is not known which. */
  candidates: z.array(Id).max(50).default([]),
  taxonId: Id.optional(),
  stuckOn: Day.optional(),
  recipeVersionId: Id.optional(),
  rooted: Plants.optional(),
  placeId: Id,
  ...newBatch,
});

const goingOn = {
  batchId: Id,
  n: SomePlants,
  toBatchId: Id,
  placeId: Id,
  /** Nothing is left behind: a count of none right after the act. */
  leavesNone: z.boolean().optional(),
  /** Positions on the plot, such as "r3 c12". */
  positions: z.array(Words).max(2_000).optional(),
  ...newBatch,
};
export const Lifted = z.strictObject({ kind: z.literal('lifted'), ...goingOn });
export const Potted = z.strictObject({ kind: z.literal('potted'), ...goingOn });
export const Planted = z.strictObject({ kind: z.literal('planted'), ...goingOn });

/** Another place at the same stage: the whole batch, or a stated n into another batch. */
export const Moved = z
  .strictObject({
    kind: z.literal('moved'), batchId: Id, placeId: Id, toBatchId: Id.optional(), n: SomePlants.optional(),
    rooted: Plants.optional(), ...newBatch,
  })
  .refine((said) => (said.toBatchId === undefined) === (said.n === undefined), {
    path: ['n'], error: 'a part of a batch needs both how many and the batch they go to',
  });

export const Restuck = z.strictObject({
  kind: z.literal('restuck'), batchId: Id, n: SomePlants, toBatchId: Id, stickingId: Id, placeId: Id,
  recipeVersionId: Id.optional(), ...newBatch,
});

/** To a partner in the programme (with the batch in their hands) or outside (in words). */
export const GivenOut = z
  .strictObject({
    kind: z.literal('givenOut'), batchId: Id, n: SomePlants, partnerId: Id.optional(), toBatchId: Id.optional(),
    placeId: Id.optional(), outside: Words.optional(), rooted: Plants.optional(), ...newBatch,
  })
  .refine((said) => (said.partnerId === undefined) !== (said.outside === undefined), {
    path: ['outside'], error: 'name either a partner of the programme or who took them outside',
  })
  .refine((said) => (said.partnerId === undefined) === (said.toBatchId === undefined && said.placeId === undefined), {
    path: ['toBatchId'], error: 'plants given to a partner need their batch and place there',
  });

export const Mixed = z.strictObject({
  kind: z.literal('mixed'), toBatchId: Id, placeId: Id,
  parts: z.array(z.strictObject({ batchId: Id, n: SomePlants })).min(2, { error: 'name at least two batches' }).max(50),
  ...newBatch,
});

export const Identified = z.strictObject({
  kind: z.literal('identified'), batchId: Id, stickingId: Id, toBatchId: Id, n: SomePlants, placeId: Id, ...newBatch,
});
