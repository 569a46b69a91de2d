import { z } from 'zod';
import { BatchInList } from './batch.ts';
import { IncidentShown, TapState } from './incident.ts';
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
  /** What is looked at before the batches: all five, those that are here marked as asked. None at a site. */
  taps: z.array(TapState),
  /** Open at this place or at one that it lies in. */
  incidents: z.array(IncidentShown),
  /** Sprayed here or around, and not to be entered yet: from then on, by the programme's clock. */
  noEntryBefore: z.object({ day: Day, minute: z.int(), product: z.string().nullable(), placeName: z.string() }).nullable(),
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
