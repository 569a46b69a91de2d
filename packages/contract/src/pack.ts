import { z } from 'zod';
import { DonorTreeState } from './donor-tree.ts';
import { Labelled } from './label.ts';
import { Role } from './people.ts';
import { PlaceKind } from './place.ts';
import { Cell } from './position.ts';
import { Programme } from './programme.ts';
import { Round } from './round.ts';
import { SealKey } from './seal.ts';
import { Day } from './shapes.ts';
import { Stage } from './entry/words.ts';

/**
 * What a phone takes along to log without a signal. It holds no exact place, no permission,
 * no note and nobody's words: only what must be chosen from, and what the books are made of.
 */

/** What can be stuck: cuttings of one donor tree, taken on one trip. */
export const PackedBundle = z.object({
  id: z.uuid(),
  tripDay: Day,
  donorTree: z.string(),
  taxon: z.string(),
  stand: z.string(),
  cuttings: z.int(),
  /** Of them, so many are stuck. */
  stuck: z.int(),
});
export type PackedBundle = z.infer<typeof PackedBundle>;

/** Answer of GET pack: what holds wherever one walks. */
export const Pack = z.object({
  /** The moment, by the server's clock: how old the pack is. */
  at: z.string(),
  programme: Programme,
  me: z.object({ personId: z.uuid(), name: z.string(), role: Role }),
  /** Who may have looked, by name. */
  people: z.array(z.object({ id: z.uuid(), name: z.string() })),
  /** Workdays of the last seven days and of tomorrow. */
  workdays: z.array(z.object({ id: z.uuid(), day: Day, place: z.string().nullable(), tasks: z.string().nullable() })),
  /** Parents before what lies in them, in walking order; closed ones are left out. */
  places: z.array(z.object({ id: z.uuid(), name: z.string(), kind: PlaceKind, parentId: z.uuid().nullable(), batches: z.int() })),
  /** Places measured without a signal are sealed to it at once. */
  seal: SealKey,
  /** Where trips go. */
  stands: z.array(z.object({ id: z.uuid(), name: z.string(), cell: Cell.nullable() })),
  /** Of the dead too: their labels are in use. */
  donorTrees: z.array(z.object({ id: z.uuid(), label: z.string(), standId: z.uuid(), taxonId: z.uuid(), state: DonorTreeState })),
  taxa: z.array(z.object({ id: z.uuid(), scientificName: z.string(), commonName: z.string().nullable() })),
  /** Of trips of the last 200 days, newest first: those with cuttings that are not stuck yet. At most 500. */
  bundles: z.array(PackedBundle),
  /** The newest version of each recipe, by name. */
  recipes: z.array(z.object({ versionId: z.uuid(), name: z.string(), version: z.int(), medium: z.string().nullable() })),
  /** What leads to donor trees and to open places, earlier labels too: a scan finds them without a signal. Those of batches come with their walk. */
  labels: z.array(z.object({ code: z.string(), is: Labelled.exclude(['batch']), id: z.uuid() })),
});
export type Pack = z.infer<typeof Pack>;

/** One entry as the replay needs it: who wrote it stays at home. */
export const PackedEntry = z.object({
  id: z.uuid(),
  observedOn: Day,
  minute: z.int().optional(),
  workdayId: z.uuid().optional(),
  line: z.int().optional(),
  receivedOn: Day,
  door: z.enum(['desk', 'outbox', 'import', 'api']),
  clockUnsure: z.boolean().optional(),
  authorUnverified: z.boolean().optional(),
  saying: z.looseObject({ kind: z.string() }),
});
export type PackedEntry = z.infer<typeof PackedEntry>;

/** What the books of one batch are made of. */
export const PackedBooks = z.object({
  batch: z.object({ id: z.uuid(), stage: Stage, stickingId: z.uuid().optional(), openingEntryId: z.uuid(), openingPlaceId: z.uuid() }),
  entries: z.array(PackedEntry),
});
export type PackedBooks = z.infer<typeof PackedBooks>;

/** Answer of GET places/:id/pack and work-lists/:id/pack: the walk, and the books of its first 500 batches. A list is named by its kind. */
export const PlacePack = z.object({
  at: z.string(),
  round: Round,
  books: z.array(PackedBooks),
  /** Of all batches of the walk, earlier labels too. */
  labels: z.array(z.object({ code: z.string(), batchId: z.uuid() })),
});
export type PlacePack = z.infer<typeof PlacePack>;
