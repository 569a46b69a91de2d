import { z } from 'zod';
import { Cell, ExactPlace } from './position.ts';
import { Id, orNothing, Prose, Sensitivity, Words } from './shapes.ts';

/** A wild source population at a place. Body of PUT. */
export const StandContent = z.strictObject({
  name: Words,
  /** The partner on whose land it is. */
  partnerId: orNothing(Id),
  /** The stricter of the stand's class and of its trees' taxa holds. */
  sensitivity: Sensitivity.default(0),
  /** Everybody in the programme reads it: no directions here. */
  note: orNothing(Prose),
});
export type StandContent = z.infer<typeof StandContent>;

export const NewStand = StandContent.extend({ id: Id, /** Kept apart, and not answered here. */ place: orNothing(ExactPlace) });
export type NewStand = z.infer<typeof NewStand>;

export const Stand = z.object({
  ...StandContent.shape,
  id: Id,
  /** Null: not told, or withheld. */
  cell: Cell.nullable(),
});
export type Stand = z.infer<typeof Stand>;
