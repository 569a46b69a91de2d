import { z } from 'zod';
import { DonorTreeState } from './donor-tree.ts';
import { Day, Id, orNothing, Prose, Words } from './shapes.ts';

const Labelled = z.object({ id: z.uuid(), label: z.string() });

/** Body of POST donor-trees/:id/clone-statements: the two are one clone, or are not after all. */
export const NewCloneStatement = z.strictObject({
  id: Id,
  otherTreeId: Id,
  isSame: z.boolean(),
  saidOn: Day,
  /** Such as "same root, both stems", or the name of a test. */
  evidence: Words,
});
export type NewCloneStatement = z.infer<typeof NewCloneStatement>;

/** Answer of GET donor-trees/:id/clone. */
export const CloneGroup = z.object({
  /** All trees that are one clone with it, itself among them; empty while it is taken to be distinct. */
  trees: z.array(Labelled),
  /** The last one first. */
  said: z.array(
    z.object({ id: z.uuid(), tree: Labelled, other: Labelled, isSame: z.boolean(), saidOn: Day, by: z.string().nullable(), evidence: z.string(), holds: z.boolean() }),
  ),
  /** Of its stand and species: how many trees there are, and how many are taken to be distinct since nobody has said otherwise. */
  stand: z.object({ trees: z.int(), clones: z.int(), assumedDistinct: z.int() }),
});
export type CloneGroup = z.infer<typeof CloneGroup>;

/** Body of POST donor-trees/:id/sightings. */
export const NewSighting = z.strictObject({ id: Id, seenOn: Day, state: DonorTreeState, /** No directions here. */ note: orNothing(Prose) });
export type NewSighting = z.infer<typeof NewSighting>;

/** One answer in GET donor-trees/:id/sightings, the last one first. */
export const Sighting = z.object({ id: z.uuid(), seenOn: Day, state: DonorTreeState, by: z.string(), note: z.string().nullable() });
export type Sighting = z.infer<typeof Sighting>;
