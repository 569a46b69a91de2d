import { z } from 'zod';
import { BatchInLine } from './batch.ts';
import { Day } from './shapes.ts';

/** One thing that is held, why, and which plants it keeps where they stand. Answer of GET holds, the last first. */
export const HoldShown = z.object({
  /** The entry that held them. */
  entryId: z.uuid(),
  heldOn: Day,
  by: z.string().nullable(),
  /** `return`: they came back from elsewhere, and arrived held. `batches`: several at once, such as those of a trace. */
  subject: z.enum(['batch', 'batches', 'place', 'donorTree', 'trip', 'mediumLot', 'return']),
  subjectId: z.uuid().nullable(),
  subjectName: z.string().nullable(),
  reason: z.string().nullable(),
  sample: z.string().nullable(),
  result: z.string().nullable(),
  /** Those of its batches that are held now and have plants. */
  batches: z.array(BatchInLine),
  plants: z.int(),
});
export type HoldShown = z.infer<typeof HoldShown>;

/** A sticking that plants of a mixed batch may be of. Answer of GET batches/:id/possible-stickings. */
export const PossibleSticking = z.object({
  id: z.uuid(),
  stuckOn: Day.nullable(),
  donorTree: z.object({ id: z.uuid(), label: z.string() }).nullable(),
  /** A label of the batch that it came from. */
  fromLabel: z.string().nullable(),
});
export type PossibleSticking = z.infer<typeof PossibleSticking>;
