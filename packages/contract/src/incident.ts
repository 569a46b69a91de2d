import { z } from 'zod';
import { IncidentKind, Severity, Tap } from './entry/around.ts';
import { Day, Id } from './shapes.ts';

/** Which incidents are asked for. All given ones must hold. */
export const IncidentQuery = z
  .object({
    /** Told of this place, or of one that it lies in. */
    placeId: Id.optional(),
    /** At a place where it stood at the time. */
    batchId: Id.optional(),
    from: Day.optional(),
    until: Day.optional(),
    state: z.enum(['open', 'over']).optional(),
  })
  .refine(({ from, until }) => from === undefined || until === undefined || from <= until, { path: ['until'], error: 'must not lie before the first day' });
export type IncidentQuery = z.infer<typeof IncidentQuery>;

/** What went wrong at a place, from the latest known good until it was right again. */
export const IncidentShown = z.object({
  entryId: z.uuid(),
  placeId: z.uuid(),
  placeName: z.string(),
  what: IncidentKind,
  severity: Severity,
  detail: z.string().nullable(),
  observedOn: Day,
  /** Last known good, or the day on which it was seen. */
  from: Day,
  /** Empty while it is open. */
  until: Day.nullable(),
  /** Somebody on a round saw it right again; nobody told an end. */
  endSeen: z.boolean(),
  /** To be named as `sawVersion` by the next correction. */
  latestVersionId: z.uuid(),
  writtenBy: z.string().nullable(),
  /** Whether the caller may correct it now. */
  mayMend: z.boolean(),
});
export type IncidentShown = z.infer<typeof IncidentShown>;

/** What was told of one tap last, and what follows from it on the next round. */
export const TapState = z.object({
  tap: Tap,
  /** Asked on the next round; the others are there for whoever finds that they are. */
  isAsked: z.boolean(),
  last: z.object({ day: Day, answer: z.enum(['yes', 'no', 'notHere']) }).nullable(),
  /** The last day on which it was right. */
  lastGoodOn: Day.nullable(),
  /** An incident of that kind that is open at this place. */
  open: z.object({ entryId: z.uuid(), since: Day }).nullable(),
});
export type TapState = z.infer<typeof TapState>;
