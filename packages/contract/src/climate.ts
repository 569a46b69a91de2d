import { z } from 'zod';
import { Problem } from './problem.ts';
import { Day, Id, orNothing, Words } from './shapes.ts';

/** One look at a thermometer or hygrometer. The caller makes the id: sending it twice records it once. */
export const NewClimateReading = z
  .strictObject({
    id: Id,
    placeId: Id,
    takenAt: z.iso.datetime({ offset: true, error: 'must be a moment such as 2026-11-27T08:30:00Z' }),
    temperatureC: orNothing(z.number({ error: 'must be a number' }).min(-60, { error: 'no place of plants is so cold' }).max(80, { error: 'no place of plants is so hot' })),
    humidityPercent: orNothing(z.number({ error: 'must be a number' }).min(0).max(100)),
  })
  .refine(({ temperatureC, humidityPercent }) => temperatureC !== null || humidityPercent !== null, {
    path: ['temperatureC'], error: 'tell a temperature, a humidity, or both',
  });
export type NewClimateReading = z.infer<typeof NewClimateReading>;

export const WriteClimate = z.strictObject({
  readings: z.array(NewClimateReading).min(1, { error: 'must hold at least one reading' }).max(2_000, { error: 'at most 2,000 readings a request' }),
});
export type WriteClimate = z.infer<typeof WriteClimate>;

/** What became of each reading, in the order sent. A bad one does not keep the others out. */
export const ClimateWritten = z.object({
  readings: z.array(z.object({ id: z.uuid(), status: z.enum(['written', 'already', 'refused']), problem: Problem.optional() })),
});
export type ClimateWritten = z.infer<typeof ClimateWritten>;

/** From which day to which, both included; the last 30 days when left out. */
export const ClimateQuery = z
  .object({ from: Day.optional(), until: Day.optional() })
  .refine(({ from, until }) => from === undefined || until === undefined || from <= until, { path: ['until'], error: 'must not lie before the first day' });
export type ClimateQuery = z.infer<typeof ClimateQuery>;

const Spread = z.object({ lowest: z.number(), mean: z.number(), highest: z.number() });

/** Answer of GET places/:id/climate. */
export const Climate = z.object({
  from: Day,
  until: Day,
  /** Days with readings, the first one first. A mean is of the readings, not of the hours. */
  days: z.array(z.object({ day: Day, readings: z.int(), temperatureC: Spread.nullable(), humidityPercent: Spread.nullable() })),
  /** The last of them one by one, the newest first. */
  latest: z.array(
    z.object({
      id: Id, takenAt: z.string(), temperatureC: z.number().nullable(), humidityPercent: z.number().nullable(),
      toldBy: z.string(), setAside: z.string().nullable(),
    }),
  ),
});
export type Climate = z.infer<typeof Climate>;

/** A wrong reading stays readable, and is counted no more. */
export const ReadingSetAside = z.strictObject({ reason: Words });
export type ReadingSetAside = z.infer<typeof ReadingSetAside>;
