import { z } from 'zod';
import { orNothing, Prose } from './shapes.ts';

/** A place as measured. Answered only by the exact-place routes, and only to the grant *see exact places*. */
export const ExactPlace = z.strictObject({
  /** WGS 84 degrees, kept to six decimals. */
  latitude: z.number().min(-90).max(90),
  longitude: z.number().min(-180).max(180),
  /** Metres, as the instrument told it. */
  uncertaintyM: orNothing(z.int().min(1).max(100_000)),
  /** Metres above the sea. */
  elevationM: orNothing(z.int().min(-500).max(9_000)),
  /** How to find it on foot. */
  directions: orNothing(Prose),
});
export type ExactPlace = z.infer<typeof ExactPlace>;

/** The square of a grid in which a place lies: all that is told of it elsewhere. */
export const Cell = z.object({
  /** Centre of the square, WGS 84 degrees. */
  latitude: z.number(),
  longitude: z.number(),
  /** Side of the square in degrees: 0.1, 0.01 or 0.001. Print as many decimals. */
  degrees: z.number(),
  /** How far off the true place may be, in metres. */
  halfDiagonalM: z.number(),
});
export type Cell = z.infer<typeof Cell>;
