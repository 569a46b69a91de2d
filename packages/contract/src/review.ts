import { z } from 'zod';
import { Stage } from './entry/words.ts';
import { Day, Id, PageQuery, Prose } from './shapes.ts';
import { FlagCode } from './written.ts';

/** What a coordinator should look at: what the books flag, what a phone could only tell as a note, and what it told after all once somebody was done with that note. */
export const ReviewCode = z.enum([...FlagCode.options, 'not-booked', 'told-after-all']);
export type ReviewCode = z.infer<typeof ReviewCode>;

export const ReviewQuery = PageQuery.extend({
  /** Only what was assigned to this person. */
  assignedTo: Id.optional(),
  /** Only doubts of this kind. */
  code: ReviewCode.optional(),
});
export type ReviewQuery = z.infer<typeof ReviewQuery>;

/** How many doubts of one kind are open; `mine`: of those, assigned to the caller. */
export const ReviewGroup = z.object({ code: ReviewCode, n: z.int(), oldest: Day, mine: z.int() });
export type ReviewGroup = z.infer<typeof ReviewGroup>;

/** `accepted` and `mended` take a flag off the list; what was asked, answered or assigned stays on it. */
export const Decision = z.enum(['accepted', 'mended', 'asked', 'answered', 'assigned']);
export type Decision = z.infer<typeof Decision>;

export const NewReview = z
  .strictObject({
    id: Id,
    entryId: Id,
    /** Left out for an entry that waits and so is of no batch yet. */
    batchId: Id.optional(),
    code: ReviewCode,
    /** `asked`: the note is the question, and goes to whoever wrote the entry. */
    decision: Decision.exclude(['answered']),
    assignedTo: Id.optional(),
    note: Prose.optional(),
  })
  .refine((review) => (review.decision === 'assigned') === (review.assignedTo !== undefined), {
    path: ['assignedTo'], error: 'say to whom, when and only when it is assigned',
  })
  .refine((review) => review.decision !== 'asked' || review.note !== undefined, { path: ['note'], error: 'say what you ask' });
export type NewReview = z.infer<typeof NewReview>;

/** Many of them, decided alike for one reason: all or none. */
export const DecideMany = z.strictObject({
  decision: z.literal('accepted'),
  note: Prose,
  items: z.array(z.strictObject({ id: Id, entryId: Id, batchId: Id.optional(), code: ReviewCode })).min(1, { error: 'choose at least one' }).max(200),
});
export type DecideMany = z.infer<typeof DecideMany>;

/** What was asked of the caller about an entry of theirs. */
export const Question = z.object({
  id: z.uuid(),
  entryId: z.uuid(),
  code: ReviewCode,
  question: z.string().nullable(),
  by: z.string(),
  at: z.string(),
  kind: z.string(),
  said: z.looseObject({ kind: z.string() }),
  day: Day,
  n: z.int().nullable(),
  note: z.string().nullable(),
  batch: z.object({ id: z.uuid(), label: z.string().nullable(), placeName: z.string().nullable() }).nullable(),
});
export type Question = z.infer<typeof Question>;

export const NewAnswer = z.strictObject({ id: Id, answer: Prose });
export type NewAnswer = z.infer<typeof NewAnswer>;

/** Something a coordinator should look at. Nothing ages out of the list unseen. */
export const ReviewItem = z.object({
  entryId: z.uuid(),
  code: ReviewCode,
  day: Day,
  n: z.int().nullable(),
  batch: z.object({ id: z.uuid(), label: z.string().nullable(), stage: Stage, donorLabel: z.string().nullable(), placeName: z.string().nullable() }).nullable(),
  kind: z.string(),
  said: z.looseObject({ kind: z.string() }),
  note: z.string().nullable(),
  seenBy: z.string().nullable(),
  writtenBy: z.string().nullable(),
  receivedAt: z.string(),
  /** Whoever wrote it has an account, so a question reaches them. */
  canBeAsked: z.boolean(),
  /** Ids that a waiting entry waits for. */
  waitsFor: z.array(z.uuid()),
  /** What was decided so far, the newest first. */
  decisions: z.array(
    z.object({ decision: Decision, by: z.string(), at: z.string(), note: z.string().nullable(), assignedTo: z.string().nullable(), askedOf: z.string().nullable() }),
  ),
});
export type ReviewItem = z.infer<typeof ReviewItem>;
