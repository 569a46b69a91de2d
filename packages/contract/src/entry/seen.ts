import { z } from 'zod';
import { Id, Prose, Words } from '../shapes.ts';
import { Certainty, Dead, Look, Plants, rootsWithinAlive, SomePlants } from './words.ts';

/** Alive of the whole batch, or of a sample. Blank is not 0: leave out what was not looked at. */
export const Counted = z
  .strictObject({
    kind: z.literal('counted'),
    batchId: Id,
    alive: Plants,
    /** A sample of so many was looked at: it feeds rates and moves nothing. */
    sampleOf: SomePlants.optional(),
    look: Look,
    rooted: Plants.optional(),
    callused: Plants.optional(),
    dead: z.array(Dead).max(20).default([]),
    conditions: Prose.optional(),
  })
  .refine(rootsWithinAlive, { path: ['rooted'], error: 'rooted and callused together cannot be more than are alive' })
  .refine((seen) => seen.sampleOf === undefined || seen.alive <= seen.sampleOf, {
    path: ['alive'], error: 'cannot be more than the sample looked at',
  });

export const Died = z.strictObject({
  kind: z.literal('died'), batchId: Id, n: SomePlants, cause: Words, certainty: Certainty.default('seen'),
});

export const ThrownOut = z.strictObject({ kind: z.literal('thrownOut'), batchId: Id, n: SomePlants, reason: Words });

/** The tray is over: green and unrooted, thrown out at the verdict. */
export const Called = z.strictObject({ kind: z.literal('called'), batchId: Id, n: SomePlants });

export const Found = z.strictObject({ kind: z.literal('found'), batchId: Id, n: SomePlants, reason: Words });

/** A look at planted trees, on a batch or on a whole plot. Only the dead are lost. */
export const Checked = z
  .strictObject({
    kind: z.literal('checked'),
    batchId: Id.optional(),
    placeId: Id.optional(),
    alive: Plants,
    dead: z.array(Dead).max(20).default([]),
    notFound: Plants.default(0),
    notLooked: Plants.default(0),
  })
  .refine((seen) => (seen.batchId === undefined) !== (seen.placeId === undefined), {
    path: ['batchId'], error: 'name either a batch or a plot',
  });
