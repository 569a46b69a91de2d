import { z } from 'zod';
import { Counted, Died, Found, Called, ThrownOut, Checked } from './entry/seen.ts';
import { GivenOut, Identified, Lifted, Mixed, Moved, Planted, Potted, Received, Restuck, Stuck } from './entry/moved.ts';
import { Held, Incident, Noted, Released, Treated } from './entry/around.ts';
import { Day, Id, Prose } from './shapes.ts';

/** What an entry says that is not a correction of another one. */
export const PlainSaying = z.discriminatedUnion('kind', [
  Stuck, Received, Counted, Died, ThrownOut, Called, Lifted, Potted, Planted, Moved, Restuck, GivenOut, Found, Mixed,
  Identified, Checked, Held, Released, Treated, Incident, Noted,
]);
export type PlainSaying = z.infer<typeof PlainSaying>;

const Correction = { entryId: Id, /** Id of the entry or of the correction last seen. */ sawVersion: Id, reason: Prose };

/** The target leaves the books. */
export const Withdrawn = z.strictObject({ kind: z.literal('withdrawn'), ...Correction });

/** The target changes batch, day or numbers, never its kind. */
export const Replaced = z.strictObject({
  kind: z.literal('replaced'),
  ...Correction,
  instead: z.strictObject({
    observedOn: Day,
    minute: z.int().min(0).max(1439).optional(),
    saying: PlainSaying,
  }),
});

export const Saying = z.discriminatedUnion('kind', [...PlainSaying.options, Withdrawn, Replaced]);
export type Saying = z.infer<typeof Saying>;

/** One entry as a caller sends it. The caller makes the id: sending it twice records it once. */
export const NewEntry = z.strictObject({
  id: Id,
  /** The day it was seen or done, in the programme's zone. */
  observedOn: Day,
  /** Minute of that day, 0..1439, when it is known. */
  minute: z.int().min(0).max(1439).optional(),
  /** Who saw it, when that is somebody else than who writes. */
  seenBy: Id.optional(),
  /** Who wrote it down, when a device that several share brings it for them. A claim; from an outbox only. */
  writtenBy: Id.optional(),
  writtenAt: z.iso.datetime({ offset: true }),
  /** The phone's clock minus the server's, in seconds, as last measured. */
  clockOffsetSeconds: z.int().optional(),
  workdayId: Id.optional(),
  line: z.int().min(1).optional(),
  note: Prose.optional(),
  saying: Saying,
});
export type NewEntry = z.infer<typeof NewEntry>;

export const WriteEntries = z.strictObject({
  door: z.enum(['desk', 'outbox', 'api']).default('desk'),
  entries: z.array(NewEntry).min(1, { error: 'must hold at least one entry' }).max(500, { error: 'at most 500 entries a request' }),
  /** Ids of entries to write although later ones become impossible by them. */
  confirm: z.array(Id).default([]),
  /** All or nothing: they tell of one act, such as sorting a tray, so one that is refused keeps the others out. */
  together: z.boolean().default(false),
}).refine(({ door, entries }) => door === 'outbox' || entries.every(({ writtenBy }) => writtenBy === undefined), {
  path: ['door'], error: 'must be outbox where an entry names in writtenBy who wrote it',
});
export type WriteEntries = z.infer<typeof WriteEntries>;
