import { z } from 'zod';
import { Day, Id, Prose, Words } from '../shapes.ts';

/** One thing that an entry may be about. */
const subject = {
  batchId: Id.optional(),
  placeId: Id.optional(),
  donorTreeId: Id.optional(),
  tripId: Id.optional(),
  /** A lot of medium, as its bag says. */
  mediumLot: Words.optional(),
};
const SUBJECTS = ['batchId', 'placeId', 'donorTreeId', 'tripId', 'mediumLot'];
const namesOne = (said: Record<string, unknown>): boolean =>
  SUBJECTS.filter((name) => said[name] !== undefined).length === 1;
const ONE = { path: ['batchId'], error: 'name one thing: batch, place, donor tree, trip or lot of medium' };

/** Several batches at once, such as those of a trace. */
const batchIds = z.array(Id).min(1, { error: 'name at least one batch' }).max(2_000, { error: 'at most 2,000 batches an entry' }).optional();
const holding = { ...subject, batchIds, reason: Words, sample: Words.optional(), result: Words.optional() };
const namesOneOrSeveral = (said: Record<string, unknown>): boolean => (said['batchIds'] === undefined ? namesOne(said) : SUBJECTS.every((name) => said[name] === undefined));
export const Held = z.strictObject({ kind: z.literal('held'), ...holding }).refine(namesOneOrSeveral, ONE);
export const Released = z.strictObject({ kind: z.literal('released'), ...holding }).refine(namesOneOrSeveral, ONE);

/** Water, feed, spray, vented, cleaned. Sprays name product, registration number, rate and re-entry. */
export const Treated = z
  .strictObject({
    kind: z.literal('treated'), ...subject,
    what: z.enum(['water', 'feed', 'spray', 'vented', 'cleaned']),
    product: Words.optional(), registration: Words.optional(), rate: Words.optional(), reentry: Words.optional(),
  })
  .refine(namesOne, ONE);

/** From the latest known good until, at a place. */
export const Incident = z.strictObject({
  kind: z.literal('incident'), placeId: Id,
  what: z.enum(['timerFailed', 'heatOff', 'frost', 'mould', 'flood', 'dry', 'other']),
  severity: z.enum(['slight', 'serious', 'severe']),
  lastGoodOn: Day.optional(), untilDay: Day.optional(), detail: Prose.optional(),
});

/** Text or a measurement on anything; "looked over, nothing to report" is one, never a count. */
export const Noted = z
  .strictObject({
    kind: z.literal('noted'), ...subject, text: Prose.optional(),
    measured: z.strictObject({ what: Words, value: z.number(), unit: Words }).optional(),
  })
  .refine(namesOne, ONE)
  .refine((said) => said.text !== undefined || said.measured !== undefined, { path: ['text'], error: 'say something, or measure something' });
