import { z } from 'zod';
import { Cell, ExactPlace } from './position.ts';
import { Day, Id, orNothing, PageQuery, Prose, Words } from './shapes.ts';

export const AgeClass = z.enum(['juvenile', 'young', 'mature', 'old']);
export const Sex = z.enum(['female', 'male', 'both', 'unknown']);
export const DonorTreeState = z.enum(['standing', 'notSeen', 'dead', 'unknown']);

/** One wild tree that cuttings are taken from. Body of PUT. */
export const DonorTreeContent = z.strictObject({
  label: Words,
  standId: Id,
  taxonId: Id,
  /** Metres above the sea, in steps of 50. */
  elevationBandM: orNothing(z.int().min(-500).max(9_000).multipleOf(50, { error: 'must be in steps of 50 m' })),
  ageClass: orNothing(AgeClass),
  estimatedAgeYears: orNothing(z.int().min(1).max(10_000)),
  sex: Sex.default('unknown'),
  state: DonorTreeState.default('standing'),
  stateSeenOn: orNothing(Day),
  /** Everybody in the programme reads it: no directions here. */
  note: orNothing(Prose),
});
export type DonorTreeContent = z.infer<typeof DonorTreeContent>;

/** `place` is kept apart and not answered; whoever stood there may tell it without the right to read it back. */
export const NewDonorTree = DonorTreeContent.extend({ id: Id, place: orNothing(ExactPlace) });
export type NewDonorTree = z.infer<typeof NewDonorTree>;

export const DonorTree = z.object({
  ...DonorTreeContent.shape,
  id: Id,
  /** Trees stated to be one clone share a group. */
  cloneGroupId: Id.nullable(),
  /** Null: not told, or withheld. */
  cell: Cell.nullable(),
});
export type DonorTree = z.infer<typeof DonorTree>;

export const DonorTreeQuery = PageQuery.extend({
  standId: Id.optional(),
  taxonId: Id.optional(),
  /** What the label has in it, in letters of any size. */
  label: Words.optional(),
});
export type DonorTreeQuery = z.infer<typeof DonorTreeQuery>;
