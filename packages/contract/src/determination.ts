import { z } from 'zod';
import { BatchInLine } from './batch.ts';
import { Day, Id, orNothing, Words } from './shapes.ts';

const Named = z.object({ id: z.uuid(), name: z.string() });
const Tree = z.object({ id: z.uuid(), label: z.string(), stand: Named, taxon: Named });

/** Body of POST stickings/:id/determinations: which wild tree a sticking is of, and how one knows. */
export const NewDetermination = z.strictObject({
  id: Id,
  /** Null: it is not known any more. */
  donorTreeId: orNothing(Id),
  determinedOn: Day,
  /** Such as "label 14 lay in the wrong tray, seen by two people". */
  evidence: Words,
});
export type NewDetermination = z.infer<typeof NewDetermination>;

/** Answer of GET stickings/:id/determinations. */
export const Determinations = z.object({
  sticking: z.object({ id: z.uuid(), stuckOn: Day.nullable(), donorTree: Tree.nullable(), taxon: Named }),
  /** The last one first; the one that holds is marked. None: it is of the tree it was written down with. */
  said: z.array(
    z.object({
      id: z.uuid(), donorTree: z.object({ id: z.uuid(), label: z.string() }).nullable(), determinedOn: Day, by: z.string().nullable(), evidence: z.string(), holds: z.boolean(),
    }),
  ),
});
export type Determinations = z.infer<typeof Determinations>;

export const EffectsQuery = z.object({
  /** Left out: it would not be known any more. */
  donorTreeId: Id.optional(),
});
export type EffectsQuery = z.infer<typeof EffectsQuery>;

/** Answer of GET stickings/:id/determination-effects: all that another donor tree would change, before it is written. */
export const DeterminationEffects = z.object({
  from: Tree.nullable(),
  to: Tree.nullable(),
  /** The sticking itself, and what was stuck again or cut from it since. */
  stickings: z.array(z.object({ id: z.uuid(), stuckOn: Day.nullable(), generation: z.int() })),
  /** Every batch of them, also empty ones, and mixed batches that hold some of them. */
  batches: z.array(BatchInLine.extend({ isMixed: z.boolean() })),
  /** Every label that hangs, or hung, on one of these batches. */
  labels: z.array(z.string()),
  /** Where trees of them are planted. */
  sites: z.array(z.object({ place: Named, plants: z.int() })),
  /** Stands whose readings and letters count otherwise from then on. */
  stands: z.array(Named),
  /** Another species: the labels say the wrong one. */
  taxonChanges: z.boolean(),
  /** Partners who would see these batches no longer, and from then on. */
  partners: z.object({ lose: z.array(z.string()), gain: z.array(z.string()) }),
  plants: z.int(),
});
export type DeterminationEffects = z.infer<typeof DeterminationEffects>;
