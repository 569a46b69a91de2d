import { z } from 'zod';
import { Stage } from './entry/words.ts';
import { Partner } from './partner.ts';
import { Day } from './shapes.ts';

/** What grows at a partner's site, of one species. */
export const PlantedThere = z.object({
  /** Null: several were mixed. */
  taxonId: z.uuid().nullable(),
  taxon: z.string().nullable(),
  commonName: z.string().nullable(),
  /** All that ever came: the five below together. */
  planted: z.int(),
  /** By the last look, without those not found. */
  alive: z.int(),
  notFound: z.int(),
  died: z.int(),
  /** Missing at two checks running, or at a count. */
  unaccounted: z.int(),
  thrownOut: z.int(),
  /** Of the living and those not found: different donor trees, where it is known of which tree a plant is. */
  donorTrees: z.int(),
  /** Plants of which it is not known. */
  ofUnknownTree: z.int(),
  lastSeenOn: Day.nullable(),
});
export type PlantedThere = z.infer<typeof PlantedThere>;

/** What concerns the caller's partner: its stands, its sites, what is in its hands. */
export const Ours = z.object({
  asOf: Day,
  partner: Partner,
  stands: z.array(
    z.object({
      id: z.uuid(),
      name: z.string(),
      donorTrees: z.int(),
      /** Cuttings ever stuck of its trees. */
      stuck: z.int(),
      /** Plants of its trees, alive now. */
      plantsByStage: z.partialRecord(Stage, z.int()),
    }),
  ),
  sites: z.array(z.object({ id: z.uuid(), name: z.string(), plots: z.int(), species: z.array(PlantedThere) })),
  hands: z.object({ batches: z.int(), plants: z.int(), /** Given, and not yet counted by them. */ unconfirmed: z.int() }),
});
export type Ours = z.infer<typeof Ours>;
