import { z } from 'zod';
import { Day, Id, orNothing, Prose } from './shapes.ts';

/** A day's work; entries hang on it. Body of PUT. */
export const WorkdayContent = z.strictObject({
  day: Day,
  placeId: orNothing(Id),
  tasks: orNothing(Prose),
  /** Who was there, by name. Adults only. */
  personIds: z.array(Id).max(500).default([]),
  /** Adults without a name here. */
  others: z.int().min(0).max(1_000).default(0),
  /** Never named, only counted. */
  children: z.int().min(0).max(1_000).default(0),
  /** Hours of the day, not of all people together. */
  hours: orNothing(z.number().min(0).max(24).multipleOf(0.1)),
});
export type WorkdayContent = z.infer<typeof WorkdayContent>;

export const NewWorkday = WorkdayContent.extend({ id: Id });
export type NewWorkday = z.infer<typeof NewWorkday>;

export const Workday = z.object({ ...NewWorkday.shape, madeBy: Id.nullable(), /** Entries that hang on it. */ entries: z.int() });
export type Workday = z.infer<typeof Workday>;

/** What was done with one species. Numbers of plants, as the books have them now. */
export const WorkdaySpecies = z.object({
  /** Null: plants of mixed batches. */
  taxonId: z.uuid().nullable(),
  name: z.string().nullable(),
  commonName: z.string().nullable(),
  stuck: z.int(),
  received: z.int(),
  lifted: z.int(),
  potted: z.int(),
  planted: z.int(),
  givenOut: z.int(),
  died: z.int(),
  unaccounted: z.int(),
  notRooted: z.int(),
  thrownOut: z.int(),
  /** Batches counted or checked, and the plants found alive in them, each batch by its last look of the day's work. */
  batchesCounted: z.int(),
  countedAlive: z.int(),
  donorTrees: z.int(),
});
export type WorkdaySpecies = z.infer<typeof WorkdaySpecies>;

/** Answer of GET workdays/:id/summary: the one page. */
export const WorkdaySummary = z.object({
  id: z.uuid(),
  day: Day,
  place: z.string().nullable(),
  tasks: z.string().nullable(),
  /** Names of adults. */
  people: z.array(z.string()),
  /** Adults with and without a name here. */
  adults: z.int(),
  children: z.int(),
  hours: z.number().nullable(),
  /** Hours of the day times adults; children's time is not counted as work. Null: no hours told. */
  peopleHours: z.number().nullable(),
  entries: z.int(),
  species: z.array(WorkdaySpecies),
});
export type WorkdaySummary = z.infer<typeof WorkdaySummary>;
