import { z } from 'zod';
import { Stage, Look } from './entry/words.ts';
import { Problem } from './problem.ts';
import { Day } from './shapes.ts';

/** The closed list of things that a coordinator should look at. */
export const FlagCode = z.enum([
  'order-unknown', 'called-by-count', 'took-more', 'found-by-count', 'found-told', 'two-readings',
  'dead-beyond-shortfall', 'rooted-fell', 'opening-withdrawn', 'rival-correction', 'day-in-future', 'clock-unsure',
  'held-moved', 'not-found-twice', 'author-unverified', 'waiting',
]);
export type FlagCode = z.infer<typeof FlagCode>;

export const FlagShown = z.object({ code: FlagCode, entryId: z.uuid(), day: Day, n: z.int().optional() });

/** Something that cannot be, or looks wrong, and how many plants were there just before. */
export const Discrepancy = FlagShown.extend({ batchId: z.uuid(), there: z.int() });
export type Discrepancy = z.infer<typeof Discrepancy>;

/**
 * Why one entry was not written. `entry/looks-wrong` and `entry/breaks-later-ones`
 * are questions: the same entry is taken when its id stands in `confirm`.
 */
export const EntryProblem = Problem.extend({ discrepancies: z.array(Discrepancy).optional() });
export type EntryProblem = z.infer<typeof EntryProblem>;

/**
 * What became of one entry. `already`: it was written before, nothing changed.
 * `waiting`: kept, without effect until the batch or entry that it names arrives.
 */
export const WrittenEntry = z.object({
  id: z.uuid(),
  status: z.enum(['written', 'already', 'waiting', 'refused']),
  flags: z.array(FlagShown.extend({ batchId: z.uuid() })),
  problem: EntryProblem.optional(),
});
export type WrittenEntry = z.infer<typeof WrittenEntry>;

/** Answer of POST entries, in the order in which the entries were sent. */
export const Written = z.object({ entries: z.array(WrittenEntry) });
export type Written = z.infer<typeof Written>;

/** One booked change of a batch; `n` is at least 1, the direction lies in the effect. */
export const MovementShown = z.object({
  entryId: z.uuid(),
  day: Day,
  effect: z.enum([
    'stuck', 'received', 'wentIn', 'splitIn', 'restuckIn', 'mixedIn', 'identifiedIn', 'givenIn', 'found', 'takenBack',
    'died', 'unaccounted', 'notRooted', 'thrownOut', 'wentOn', 'splitOut', 'restuckOut', 'mixedOut', 'identifiedOut',
    'givenOut', 'givenAcross',
  ]),
  n: z.int(),
  cause: z.string().optional(),
  toStage: Stage.optional(),
  undoes: z.uuid().optional(),
  lastSeen: Day.optional(),
});
export type MovementShown = z.infer<typeof MovementShown>;

/** The books of a batch at one moment. Blank roots are unknown, not none. */
export const BooksShown = z.object({
  balance: z.int(),
  rootedNow: z.int().optional(),
  rootedEver: z.int(),
  lastSeen: z.object({ day: Day, look: Look }).optional(),
  notFound: z.int(),
  held: z.boolean(),
  unconfirmed: z.boolean(),
  calledOn: Day.optional(),
});
export type BooksShown = z.infer<typeof BooksShown>;

/** Answer of POST entries/preview: what the books would make of it. Nothing is written. */
export const Previewed = Written.extend({
  batches: z.array(
    z.object({
      batchId: z.uuid(),
      stage: Stage,
      /** Not there for a batch that these entries open. */
      before: BooksShown.optional(),
      after: BooksShown,
      /** Booked by these entries, in the order of the books. */
      movements: z.array(MovementShown),
      flags: z.array(FlagShown),
    }),
  ),
});
export type Previewed = z.infer<typeof Previewed>;
