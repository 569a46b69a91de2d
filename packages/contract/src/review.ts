import { z } from 'zod';
import { Stage } from './entry/words.ts';
import { Day, Id, PageQuery, Prose } from './shapes.ts';
import { FlagCode } from './written.ts';

export const ReviewQuery = PageQuery.extend({
  /** Only what was assigned to this person. */
  assignedTo: Id.optional(),
});
export type ReviewQuery = z.infer<typeof ReviewQuery>;

/** `accepted` and `mended` take a flag off the list; what was asked or assigned stays on it. */
export const Decision = z.enum(['accepted', 'mended', 'asked', 'assigned']);
export type Decision = z.infer<typeof Decision>;

export const NewReview = z
  .strictObject({
    id: Id,
    entryId: Id,
    /** Left out for an entry that waits and so is of no batch yet. */
    batchId: Id.optional(),
    code: FlagCode,
    decision: Decision,
    assignedTo: Id.optional(),
    note: Prose.optional(),
  })
  .refine((review) => (review.decision === 'assigned') === (review.assignedTo !== undefined), {
    path: ['assignedTo'], error: 'say to whom, when and only when it is assigned',
  });
export type NewReview = z.infer<typeof NewReview>;

/** Something a coordinator should look at. Nothing ages out of the list unseen. */
export const ReviewItem = z.object({
  entryId: z.uuid(),
  code: FlagCode,
  day: Day,
  n: z.int().nullable(),
  batch: z.object({ id: z.uuid(), label: z.string().nullable(), stage: Stage, donorLabel: z.string().nullable(), placeName: z.string().nullable() }).nullable(),
  kind: z.string(),
  said: z.looseObject({ kind: z.string() }),
  note: z.string().nullable(),
  seenBy: z.string().nullable(),
  writtenBy: z.string().nullable(),
  receivedAt: z.string(),
  /** Ids that a waiting entry waits for. */
  waitsFor: z.array(z.uuid()),
  /** What was decided so far, the newest first. */
  decisions: z.array(
    z.object({ decision: Decision, by: z.string(), at: z.string(), note: z.string().nullable(), assignedTo: z.string().nullable() }),
  ),
});
export type ReviewItem = z.infer<typeof ReviewItem>;
