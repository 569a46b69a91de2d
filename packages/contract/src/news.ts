import { z } from 'zod';
import { Day, PageQuery } from './shapes.ts';

/** What arrived on one day, in the programme's zone: entries by kind, trips and sheets. */
export const NewsDay = z.object({
  day: Day,
  entries: z.int(),
  kinds: z.array(z.object({ kind: z.string(), n: z.int() })),
  trips: z.int(),
  sheets: z.int(),
});
export type NewsDay = z.infer<typeof NewsDay>;

/** What arrived since the caller last said that they have seen it, the newest day first. */
export const News = z.object({
  /** Null: never said so; then the last fortnight is told. */
  seenUntil: z.string().nullable(),
  /** The moment of this answer, to be sent back as seen. */
  asOf: z.string(),
  entries: z.int(),
  days: z.array(NewsDay),
  /** Days that had something, beyond those told. */
  moreDays: z.int(),
});
export type News = z.infer<typeof News>;

/** All that arrived until then has been looked at. */
export const SeenNews = z.strictObject({ until: z.iso.datetime() });
export type SeenNews = z.infer<typeof SeenNews>;

/** Entries that arrived on one day. */
export const NewsQuery = PageQuery.extend({ day: Day });
export type NewsQuery = z.infer<typeof NewsQuery>;

export const NewsEntry = z.object({
  id: z.uuid(),
  kind: z.string(),
  observedOn: Day,
  receivedAt: z.string(),
  said: z.looseObject({ kind: z.string() }),
  note: z.string().nullable(),
  door: z.enum(['desk', 'outbox', 'import', 'api']),
  writtenBy: z.string().nullable(),
  seenBy: z.string().nullable(),
  /** One batch that it is about, if any. */
  batch: z.object({ id: z.uuid(), label: z.string().nullable() }).nullable(),
  placeName: z.string().nullable(),
});
export type NewsEntry = z.infer<typeof NewsEntry>;
