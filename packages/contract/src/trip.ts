import { z } from 'zod';
import { Day, Id, orNothing, PageQuery, Prose, SomePlants, ThingPath } from './shapes.ts';

/** What was taken from one donor tree of one material. Body of PUT. */
export const BundleContent = z.strictObject({
  donorTreeId: Id,
  cuttings: SomePlants,
  /** Metres above the ground at which they were cut. */
  heightM: orNothing(z.number().min(0).max(150).multipleOf(0.1)),
  shoot: orNothing(z.enum(['top', 'side'])),
  foliage: orNothing(z.enum(['juvenile', 'changing', 'adult'])),
  base: orNothing(z.enum(['straight', 'heel', 'mallet'])),
  lengthCm: orNothing(z.number().min(0.1).max(500).multipleOf(0.1)),
});
export type BundleContent = z.infer<typeof BundleContent>;

export const NewBundle = BundleContent.extend({ id: Id });
export type NewBundle = z.infer<typeof NewBundle>;

const Outing = {
  wentOn: Day,
  standId: Id,
  ledBy: orNothing(Id),
  people: orNothing(z.int().min(1).max(1_000)),
};

/** Body of PUT. */
export const TripContent = z.strictObject({ ...Outing, permissionId: orNothing(Id) });
export type TripContent = z.infer<typeof TripContent>;

export const NewTrip = z.strictObject({
  ...Outing,
  id: Id,
  /** Left out: the permission that covers stand and day, if just one does. Null: none. */
  permissionId: Id.nullable().optional(),
  /** Kept apart: read only with the grant *see exact places*. */
  note: orNothing(Prose),
  bundles: z.array(NewBundle).max(500).default([]),
});
export type NewTrip = z.infer<typeof NewTrip>;

/** What to think twice about. Nothing here refuses the trip: it has happened. */
export const TripWarning = z.object({
  code: z.enum(['permission-overused', 'permission-not-valid', 'permission-for-other-trees', 'no-permission', 'cut-recently']),
  donorTreeId: Id.optional(),
  /** Day of the earlier trip, for `cut-recently`. */
  cutOn: Day.optional(),
  /** Cuttings taken and allowed, for `permission-overused`; only with the grant *see exact places*. */
  used: z.int().optional(),
  quota: z.int().optional(),
});
export type TripWarning = z.infer<typeof TripWarning>;

export const Trip = z.object({
  ...TripContent.shape,
  id: Id,
  bundles: z.array(z.object({ ...NewBundle.shape, /** Of its cuttings, so many have been stuck. */ stuck: z.int() })),
  warnings: z.array(TripWarning),
});
export type Trip = z.infer<typeof Trip>;

/** A trip in a list: sums instead of bundles. Newest first. */
export const TripInList = z.object({ ...TripContent.shape, id: Id, donorTrees: z.int(), cuttings: z.int() });
export type TripInList = z.infer<typeof TripInList>;

export const TripQuery = PageQuery.extend({ standId: Id.optional(), permissionId: Id.optional() });
export type TripQuery = z.infer<typeof TripQuery>;

/** Whose last cuts are asked for: the trees of a stand, as they were on a day. */
export const LastCutQuery = z.object({ standId: Id, on: Day });
export type LastCutQuery = z.infer<typeof LastCutQuery>;

/** A donor tree cut within two years before that day. Common practice leaves a tree alone for so long. */
export const LastCut = z.object({ donorTreeId: z.uuid(), cutOn: Day });
export type LastCut = z.infer<typeof LastCut>;

export const BundlePath = ThingPath.extend({ bundleId: Id });
export type BundlePath = z.infer<typeof BundlePath>;

/** Notes tell the way: read and changed only with the grant *see exact places*. */
export const TripNote = z.strictObject({ note: Prose });
export type TripNote = z.infer<typeof TripNote>;
