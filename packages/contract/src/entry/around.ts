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
/** Ends the hold of one entry, or, where none is named, all that holds those plants. */
export const Released = z.strictObject({ kind: z.literal('released'), ...holding, holdId: Id.optional() }).refine(namesOneOrSeveral, ONE);

export const TreatmentKind = z.enum(['water', 'feed', 'spray', 'vented', 'cleaned']);
export type TreatmentKind = z.infer<typeof TreatmentKind>;

/** What whoever enters next, or an inspector, has to be told of a spray. "Not known" is an answer, nothing is none. */
const OF_A_SPRAY = ['product', 'registration', 'rate', 'appliedBy', 'reentryHours'] as const;

/** Water, feed, spray, vented, cleaned. Sprays name product, registration number, rate, by whom and re-entry. */
export const Treated = z
  .strictObject({
    kind: z.literal('treated'), ...subject,
    what: TreatmentKind,
    product: Words.optional(), registration: Words.optional(), rate: Words.optional(), appliedBy: Words.optional(),
    /** Hours until somebody may go in without protection, as the label says. */
    reentryHours: z.number({ error: 'must be a number of hours' }).min(0).max(2_160).optional(),
    /** The same in the label's words. */
    reentry: Words.optional(),
  })
  .refine(namesOne, ONE)
  .superRefine((said, context) => {
    if (said.what !== 'spray') return;
    for (const name of OF_A_SPRAY) {
      const isTold = said[name] !== undefined || (name === 'reentryHours' && said.reentry !== undefined);
      if (!isTold) context.addIssue({ code: 'custom', path: [name], message: 'a spray needs it; write what the label says' });
    }
  });

export const IncidentKind = z.enum(['lightsOff', 'airOff', 'timerFailed', 'heatOff', 'frost', 'mould', 'flood', 'dry', 'other']);
export type IncidentKind = z.infer<typeof IncidentKind>;

export const Severity = z.enum(['slight', 'serious', 'severe']);
export type Severity = z.infer<typeof Severity>;

/** From the latest known good until, at a place. */
export const Incident = z
  .strictObject({
    kind: z.literal('incident'), placeId: Id,
    what: IncidentKind,
    severity: Severity,
    /** Left out: the day on which it was seen. */
    lastGoodOn: Day.optional(),
    /** When it was right again. Left out: it is open, until a round sees it right. */
    untilDay: Day.optional(),
    detail: Prose.optional(),
  })
  .refine(({ lastGoodOn, untilDay }) => lastGoodOn === undefined || untilDay === undefined || lastGoodOn <= untilDay, {
    path: ['untilDay'], error: 'must not lie before it was last known good',
  });

/** What is looked at before the batches of a place: lights on, air or mist on, heat on, lid wet, mould seen. */
export const Tap = z.enum(['lights', 'air', 'heat', 'lid', 'mould']);
export type Tap = z.infer<typeof Tap>;

export const TapAnswer = z.enum(['yes', 'no', 'notHere']);
export type TapAnswer = z.infer<typeof TapAnswer>;

/** A note that tells what a phone could not get into the books: the id that it had there, and the code of the refusal, if there was one. */
export const NotBooked = z.strictObject({ id: Id, code: Words.optional() });

/**
 * Text, a measurement, or how a place was found; "looked over, nothing to report" is one, never a count.
 * What could not be booked is one as well, about nothing at all where what it was about is the very thing that is not known.
 */
export const Noted = z
  .strictObject({
    kind: z.literal('noted'), ...subject, text: Prose.optional(),
    measured: z.strictObject({ what: Words, value: z.number(), unit: Words }).optional(),
    /** Somebody stood before it and saw nothing to report: no count, but the place was walked. */
    lookedOver: z.literal(true).optional(),
    /** At a place: what was found, tap by tap; what was not looked at is left out. */
    conditions: z.partialRecord(Tap, TapAnswer).optional(),
    notBooked: NotBooked.optional(),
  })
  .refine((said) => namesOne(said) || (said.notBooked !== undefined && SUBJECTS.every((name) => said[name as keyof typeof said] === undefined)), ONE)
  .refine(({ notBooked, text }) => notBooked === undefined || text !== undefined, { path: ['text'], error: 'say what could not be booked' })
  .refine((said) => said.conditions === undefined || (said.placeId !== undefined && Object.keys(said.conditions).length > 0), {
    path: ['conditions'], error: 'are told of a place, at least one of them',
  })
  .refine((said) => [said.text, said.measured, said.lookedOver, said.conditions].some((told) => told !== undefined), { path: ['text'], error: 'say something, or measure something' });
