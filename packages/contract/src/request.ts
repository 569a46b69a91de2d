import { z } from 'zod';
import { LabelCode, Stage } from './entry/words.ts';
import { Day, Id, orNothing, PageQuery, Plants, Prose, SomePlants, Words } from './shapes.ts';

/** How far a request is. `gone` comes by the despatch alone. */
export const RequestState = z.enum(['asked', 'promised', 'packed', 'gone', 'withdrawn']);
export type RequestState = z.infer<typeof RequestState>;

/** Planted trees are not asked for. */
export const AskedStage = Stage.exclude(['planted']);

const Content = z.strictObject({
  partnerId: orNothing(Id),
  /** Who asks, when they are no partner of the programme. */
  outside: orNothing(Words),
  taxonId: Id,
  stage: AskedStage,
  plants: SomePlants,
  /** At most so many of one donor tree; null: no limit. */
  mostPerDonor: orNothing(SomePlants),
  askedOn: Day,
  wantedOn: orNothing(Day),
  /** Stands that they are to come from; none: any. */
  standIds: z.array(Id).max(100).default([]),
  /** A site or plot of the programme, where they will be planted; null: they are handed over. */
  placeId: orNothing(Id),
  /** Given back for what was collected under this permission. */
  permissionId: orNothing(Id),
  note: orNothing(Prose),
});

const isBySomebody = (told: { partnerId: string | null; outside: string | null }): boolean => (told.partnerId === null) !== (told.outside === null);
const WHO = { path: ['outside'], error: 'name either a partner of the programme or who asks from outside' };

/** Who asks for plants, how many, of what, and when they are wanted. Body of PUT. */
export const RequestContent = Content.refine(isBySomebody, WHO);
export type RequestContent = z.infer<typeof RequestContent>;

export const NewRequest = Content.extend({ id: Id }).refine(isBySomebody, WHO);
export type NewRequest = z.infer<typeof NewRequest>;

const SetAside = z.strictObject({ batchId: Id, n: SomePlants });

/** Everything set aside for a request; what is not named is free again. Body of PUT. */
export const SetAsides = z.strictObject({
  lines: z.array(SetAside).max(500).refine((lines) => new Set(lines.map(({ batchId }) => batchId)).size === lines.length, { error: 'names a batch twice' }),
});
export type SetAsides = z.infer<typeof SetAsides>;

export const PlantRequest = z.object({
  ...Content.shape,
  id: Id,
  state: RequestState,
  goneOn: Day.nullable(),
  setAside: z.array(z.object(SetAside.shape)),
});
export type PlantRequest = z.infer<typeof PlantRequest>;

/** A request in a list. Last asked first. */
export const RequestInList = z.object({
  ...Content.shape,
  id: Id,
  state: RequestState,
  goneOn: Day.nullable(),
  /** Plants set aside. */
  reserved: z.int(),
  /** Of those, so many are still there; who asked first is served first. */
  covered: z.int(),
  /** Plants that went, as the books have it now. */
  gone: z.int(),
});
export type RequestInList = z.infer<typeof RequestInList>;

/** `open`: neither gone nor withdrawn. */
export const RequestQuery = PageQuery.extend({ open: z.enum(['yes', 'no']).optional() });
export type RequestQuery = z.infer<typeof RequestQuery>;

export const RequestStateBody = z.strictObject({ state: RequestState.exclude(['gone']) });
export type RequestStateBody = z.infer<typeof RequestStateBody>;

const Labelled = z.object({ id: z.uuid(), label: z.string() });
const Named = z.object({ id: z.uuid(), name: z.string() });

/** A batch that can give plants to a request, or has some set aside for it. */
export const Supply = z.object({
  batchId: z.uuid(),
  label: z.string().nullable(),
  /** Null: nobody knows of which donor tree they are, so they cannot be spread. */
  donorTree: Labelled.nullable(),
  stand: Named.nullable(),
  place: Named,
  /** The place with all it lies in, the outermost first. */
  path: z.array(z.string()),
  container: z.string().nullable(),
  balance: z.int(),
  held: z.boolean(),
  /** Not set aside for another request. */
  free: z.int(),
  /** Set aside for this one. */
  reserved: z.int(),
  /** Of those, so many are still there; who asked first is served first. */
  covered: z.int(),
  /** What the pick over as many donor trees as can be takes here. */
  proposed: z.int(),
});
export type Supply = z.infer<typeof Supply>;

/** Answer of GET requests/:id/plants, in walking order. */
export const RequestPlants = z.object({
  supplies: z.array(Supply),
  /** The pick as a whole: what it would reach, if nothing were set aside yet; nothing once the request has gone or is withdrawn. */
  pick: z.object({ plants: z.int(), short: z.int(), donors: z.int(), stops: z.int(), isShortestProven: z.boolean() }),
  /** Donor trees with plants that are free. */
  donorsThere: z.int(),
});
export type RequestPlants = z.infer<typeof RequestPlants>;

/** One act: all of it goes, or nothing. Sending it twice despatches once. */
export const Despatch = z.strictObject({
  observedOn: Day,
  /** Where a partner keeps them; for a request of a partner that is not planted at a site. */
  placeId: Id.optional(),
  lines: z
    .array(z.strictObject({ entryId: Id, batchId: Id, n: SomePlants, /** The batch that they become there. */ toBatchId: Id, label: LabelCode.optional() }))
    .min(1, { error: 'must take at least one plant' })
    .max(200),
  workdayId: Id.optional(),
  note: Prose.optional(),
  /** Write it although later entries become impossible by it. */
  confirm: z.boolean().default(false),
});
export type Despatch = z.infer<typeof Despatch>;

/** One line of the despatch note: plants of one batch, with their family. */
export const DespatchLine = z.object({
  entryId: z.uuid(),
  batchId: z.uuid(),
  label: z.string().nullable(),
  donorTree: Labelled.nullable(),
  stand: Named.nullable(),
  stuckOn: Day.nullable(),
  container: z.string().nullable(),
  /** As the books have it now: 0 once the act was withdrawn. */
  n: Plants,
  toBatch: z.object({ id: z.uuid(), label: z.string().nullable() }).nullable(),
});
export type DespatchLine = z.infer<typeof DespatchLine>;

/** Answer of GET requests/:id/despatch. */
export const DespatchNote = z.object({
  id: z.uuid(),
  goneOn: Day,
  to: z.string(),
  /** Site or plot where they were planted, or the partner's place. */
  place: z.string().nullable(),
  taxon: z.string(),
  commonName: z.string().nullable(),
  stage: Stage,
  asked: z.int(),
  lines: z.array(DespatchLine),
  plants: z.int(),
  donorTrees: z.int(),
});
export type DespatchNote = z.infer<typeof DespatchNote>;
