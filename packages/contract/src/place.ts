import { z } from 'zod';
import { Day, Id, orNothing, Prose, Words } from './shapes.ts';

/** Sites and plots are places too, made through their own routes. */
export const PlaceKind = z.enum(['house', 'frame', 'ground', 'bench', 'tray', 'site', 'plot', 'partner']);
export type PlaceKind = z.infer<typeof PlaceKind>;

/** Body of PUT. Where it lies is changed by a move, which has a day. */
export const PlaceContent = z.strictObject({
  name: Words,
  /** Position in the walking order among its neighbours. */
  walkOrder: z.int().min(0).max(100_000).default(0),
  /** A tray's rows, counted from the label. */
  rows: orNothing(z.int().min(1).max(99)),
  /** Who holds what stands there. */
  partnerId: orNothing(Id),
  /** Not in use from this day on. */
  closedOn: orNothing(Day),
  note: orNothing(Prose),
  /** Days from one round to the next. Null: as the nearest place above says. */
  roundEveryDays: orNothing(z.int().min(1).max(366)),
});
export type PlaceContent = z.infer<typeof PlaceContent>;

/** A tray is a thing: emptied, cleaned and filled anew. */
export const NewFilling = z.strictObject({
  id: Id,
  filledOn: Day,
  medium: Words,
  /** As the bag says, so that a bad lot can be followed. */
  mediumLot: orNothing(Words),
  howCleaned: orNothing(Words),
  /** Plants stood in it all the while, and still do: said by whoever filled it. */
  plantsStayed: z.boolean().default(false),
});
export type NewFilling = z.infer<typeof NewFilling>;

export const Filling = z.object(NewFilling.shape);
export type Filling = z.infer<typeof Filling>;

export const NewPlace = PlaceContent.omit({ closedOn: true }).extend({
  id: Id,
  kind: PlaceKind.exclude(['site', 'plot']),
  parentId: orNothing(Id),
  /** With what a tray is filled to begin with. */
  filling: orNothing(NewFilling),
});
export type NewPlace = z.infer<typeof NewPlace>;

export const Place = z.object({
  ...PlaceContent.shape,
  id: Id,
  kind: PlaceKind,
  parentId: Id.nullable(),
  /** Newest first. */
  fillings: z.array(Filling),
});
export type Place = z.infer<typeof Place>;

/** One place in the tree, in walking order: parents before what lies in them. */
export const PlaceInTree = z.object({
  ...PlaceContent.shape,
  id: Id,
  kind: PlaceKind,
  parentId: Id.nullable(),
  /** 0 for what lies in no other place. */
  depth: z.int(),
  /** Batches with plants, standing right here. */
  batches: z.int(),
  plants: z.int(),
  /** Plants here and in all places within. */
  plantsWithin: z.int(),
});
export type PlaceInTree = z.infer<typeof PlaceInTree>;

/** A tray carried elsewhere, with all it holds. */
export const NewPlaceMove = z.strictObject({ id: Id, toPlaceId: orNothing(Id), movedOn: Day });
export type NewPlaceMove = z.infer<typeof NewPlaceMove>;

/** Body of PUT places/walk: all that lie in one place, or in none, in the order in which they are walked. */
export const WalkingOrder = z.strictObject({ parentId: orNothing(Id), placeIds: z.array(Id).min(1).max(2_000) });
export type WalkingOrder = z.infer<typeof WalkingOrder>;
