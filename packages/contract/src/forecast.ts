import { z } from 'zod';

const Range = z.object({ expected: z.number(), lower: z.number(), upper: z.number() });

/** Plants in pots, or planted out of them and alive, month by month: of those that are here today, with limits of 80 %. */
export const Forecast = z.object({
  asOf: z.string(), rootedMeans: z.string(),
  species: z.array(z.object({
    taxonId: z.string(), taxon: z.string(), commonName: z.string().nullable(),
    /** What is here today: cuttings, young plants, and plants in pots or planted. */
    here: z.object({ cuttings: z.int(), liners: z.int(), potted: z.int() }),
    months: z.array(Range.extend({ on: z.string() })),
    /** Stickings that the history is made of, and the cuttings of them that were decided. */
    history: z.object({ stickings: z.int(), decided: z.int() }),
    /** What is held beside them: weighs as many cuttings as it says. */
    prior: z.object({ plants: z.number(), mean: z.number(), basis: z.enum(['species-row', 'common-practice']), source: z.string() }),
    /** Forecasts as they would have been made in the past, from what was known then, beside what came. */
    past: z.array(Range.extend({ madeOn: z.string(), on: z.string(), came: z.int() })),
    /** How they did; null where there are too few to say. */
    calibration: z.object({ covered: z.number(), ratio: z.number().nullable(), forecasts: z.int() }).nullable(),
  })),
});
export type Forecast = z.infer<typeof Forecast>;
