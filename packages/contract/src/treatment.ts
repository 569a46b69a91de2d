import { z } from 'zod';
import { TreatmentKind } from './entry/around.ts';
import { Day, Id } from './shapes.ts';

/** Which treatments are asked for. All given ones must hold. */
export const TreatmentQuery = z
  .object({
    /** At this place, or on what stood in it or in a place within. */
    placeId: Id.optional(),
    what: TreatmentKind.optional(),
    from: Day.optional(),
    until: Day.optional(),
  })
  .refine(({ from, until }) => from === undefined || until === undefined || from <= until, { path: ['until'], error: 'must not lie before the first day' });
export type TreatmentQuery = z.infer<typeof TreatmentQuery>;

/** One treatment as it stands after its corrections. */
export const Treatment = z.object({
  entryId: z.uuid(),
  observedOn: Day,
  /** Minute of that day, when it is known. */
  minute: z.int().nullable(),
  what: TreatmentKind,
  /** What was treated: a place, or a batch with the place where it stood that day. */
  place: z.object({ id: z.uuid(), name: z.string(), path: z.array(z.string()) }).nullable(),
  batch: z.object({ id: z.uuid(), label: z.string().nullable() }).nullable(),
  /** A lot of medium, a donor tree, a trip: in words. */
  other: z.string().nullable(),
  product: z.string().nullable(),
  registration: z.string().nullable(),
  rate: z.string().nullable(),
  appliedBy: z.string().nullable(),
  reentry: z.string().nullable(),
  reentryHours: z.number().nullable(),
  note: z.string().nullable(),
  writtenBy: z.string().nullable(),
});
export type Treatment = z.infer<typeof Treatment>;

/** Answer of GET treatments: the books as of a day. */
export const Treatments = z.object({ asOf: Day, from: Day, until: Day, treatments: z.array(Treatment) });
export type Treatments = z.infer<typeof Treatments>;
