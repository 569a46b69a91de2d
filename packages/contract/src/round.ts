import { z } from 'zod';
import { BatchInList } from './batch.ts';
import { Look } from './entry/words.ts';
import { Day } from './shapes.ts';

/** A batch as it is met on a round, with what was counted last. */
export const BatchOnRound = BatchInList.extend({
  /** The last count of the whole batch that stands. */
  lastCount: z.object({ day: Day, alive: z.int(), rooted: z.int().nullable(), look: Look }).nullable(),
});
export type BatchOnRound = z.infer<typeof BatchOnRound>;

/** Answer of GET places/:id/round: the place and all that lies in it, in walking order. */
export const Round = z.object({
  place: z.object({ id: z.uuid(), name: z.string(), kind: z.string() }),
  /** Each with plants right here. The path names the places it lies in, from the place of the round on. */
  stops: z.array(
    z.object({
      place: z.object({ id: z.uuid(), name: z.string(), kind: z.string() }),
      path: z.array(z.string()),
      batches: z.array(BatchOnRound),
    }),
  ),
});
export type Round = z.infer<typeof Round>;
