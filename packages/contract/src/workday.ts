import { z } from 'zod';
import { Day, Id, orNothing, Prose } from './shapes.ts';

/** A day's work; entries hang on it. Body of PUT. */
export const WorkdayContent = z.strictObject({
  day: Day,
  placeId: orNothing(Id),
  tasks: orNothing(Prose),
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
