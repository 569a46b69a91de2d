import { z } from 'zod';
import { Day, Id, PageQuery, Words } from './shapes.ts';

export const DueKind = z.enum(['round', 'firstCheck', 'movingOn', 'verdict', 'gradeCheck', 'siteCheck']);
export type DueKind = z.infer<typeof DueKind>;

/** What is asked for. Left out, `until` is today. */
const filter = {
  kind: DueKind.optional(),
  /** What is due there, and in all that lies in it. */
  placeId: Id.optional(),
  /** What shows by that day. */
  until: Day.optional(),
};

export const DueQuery = PageQuery.extend(filter);
export type DueQuery = z.infer<typeof DueQuery>;

export const DuePlacesQuery = z.object({ ...filter, limit: z.coerce.number().int().min(1).max(200).default(50) });
export type DuePlacesQuery = z.infer<typeof DuePlacesQuery>;

const Named = z.object({ id: z.uuid(), name: z.string() });

/** `written`: told of it itself; `above`: of a place above; `history`: from the programme's closed stickings; `default`: Sprigline's. */
export const DaysBasis = z.enum(['written', 'above', 'history', 'default', 'season']);
export type DaysBasis = z.infer<typeof DaysBasis>;

/** Something to be done. Computed each time: the entry that does it takes it off. */
export const DueItem = z.object({
  /** Names the thing that is due, whatever its day. */
  key: z.string(),
  kind: DueKind,
  dueOn: Day,
  /** The day on which it shows: its due day, or the day until which it was put off. */
  day: Day,
  /** Where the round is, the site, or where the batch stands. */
  place: Named.extend({ kind: z.string() }),
  /** The place that one walks to get there: a tray lies on it. */
  walk: Named,
  batch: z.object({ id: z.uuid(), label: z.string().nullable(), donorTree: z.string().nullable(), taxon: z.string().nullable() }).nullable(),
  /** Planting season of a check at a site, and which of its checks. */
  season: z.object({ year: z.int(), name: z.string() }).nullable(),
  check: z.enum(['firstSeason', 'secondSpring', 'thirdYear', 'fifthYear']).nullable(),
  batches: z.int(),
  plants: z.int(),
  /** The day from which the wait is counted: stuck, or looked at last. */
  since: Day,
  /** So many days after it, and why so many. */
  wait: z.object({ days: z.int().nullable(), basis: DaysBasis, stickings: z.int().nullable() }),
  putOff: z.object({ until: Day, reason: z.string(), by: z.string(), at: z.string() }).nullable(),
});
export type DueItem = z.infer<typeof DueItem>;

/** What is due where one walks, the nearest day first. */
export const DuePlace = z.object({
  walk: Named.extend({ kind: z.string() }),
  /** What it lies in, the outermost first. */
  path: z.array(z.string()),
  day: Day,
  items: z.int(),
  kinds: z.array(z.object({ kind: DueKind, n: z.int(), day: Day })),
});
export type DuePlace = z.infer<typeof DuePlace>;

/** `items` and `places` count everything, also beyond the limit. */
export const DuePlaces = z.object({ today: Day, until: Day, items: z.int(), places: z.array(DuePlace), more: z.int() });
export type DuePlaces = z.infer<typeof DuePlaces>;

/** Not now. Holds for that due day, until a day within a year, when it shows again. */
export const NewPutOff = z
  .strictObject({
    id: Id,
    kind: DueKind,
    /** Of a round or a check at a site: the place. Of a batch: the batch. */
    placeId: Id.optional(),
    batchId: Id.optional(),
    seasonYear: z.int().min(1900).max(2999).optional(),
    /** The day it is due on, as it was seen. */
    dueOn: Day,
    until: Day,
    reason: Words,
  })
  .refine(({ kind, batchId, placeId }) => (kind === 'round' || kind === 'siteCheck' ? placeId !== undefined && batchId === undefined : batchId !== undefined && placeId === undefined), {
    path: ['placeId'], error: 'name the place of a round or a check at a site, else the batch',
  })
  .refine(({ kind, seasonYear }) => (kind === 'siteCheck') === (seasonYear !== undefined), { path: ['seasonYear'], error: 'only and always for a check at a site' });
export type NewPutOff = z.infer<typeof NewPutOff>;

const Wait = z.object({ days: z.int(), basis: z.enum(['written', 'history', 'default']), stickings: z.int().optional() });

/** The three days of each species, from sticking on, and where they come from. */
export const TaxonDays = z.object({ taxonId: z.uuid(), firstCheck: Wait, verdict: Wait, movingOn: Wait });
export type TaxonDays = z.infer<typeof TaxonDays>;
