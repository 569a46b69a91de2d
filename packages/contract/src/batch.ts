import { z } from 'zod';
import { IncidentKind, Severity, TreatmentKind } from './entry/around.ts';
import { Look, Stage } from './entry/words.ts';
import { Regime } from './regime.ts';
import { Day, Id, PageQuery } from './shapes.ts';
import { BooksShown, FlagCode, MovementShown } from './written.ts';

const Named = z.object({ id: z.uuid(), name: z.string() });
const Labelled = z.object({ id: z.uuid(), label: z.string() });

/** How a batch concerns a partner: of their stand, at their site, in their hands. */
export const PartnerRelation = z.enum(['stand', 'site', 'hands']);
export type PartnerRelation = z.infer<typeof PartnerRelation>;

/** Which batches are asked for. All given ones must hold. */
export const BatchQuery = PageQuery.extend({
  /** What stands there, and in all that lies in it. */
  placeId: Id.optional(),
  standId: Id.optional(),
  donorTreeId: Id.optional(),
  stickingId: Id.optional(),
  taxonId: Id.optional(),
  stage: Stage.optional(),
  /** How they concern the partner who asks. */
  relation: PartnerRelation.optional(),
  /** `alive`: with plants; `empty`: without. */
  state: z.enum(['alive', 'empty']).optional(),
});
export type BatchQuery = z.infer<typeof BatchQuery>;

/** A batch in a list. What the caller may not see, or nobody knows, is null. */
export const BatchInList = z.object({
  id: z.uuid(),
  /** The label given last. */
  label: z.string().nullable(),
  stage: Stage,
  /** Several stickings in one, by a stated act. */
  isMixed: z.boolean(),
  donorTree: Labelled.nullable(),
  stand: Named.nullable(),
  taxon: Named.nullable(),
  place: Named.nullable(),
  rows: z.string().nullable(),
  openedOn: Day,
  stuckOn: Day.nullable(),
  balance: z.int(),
  rootedNow: z.int().nullable(),
  lastSeenOn: Day.nullable(),
  lastLook: Look.nullable(),
  notFound: z.int(),
  held: z.boolean(),
  unconfirmed: z.boolean(),
  calledOn: Day.nullable(),
  /** How it concerns the partner who asks; empty for everybody else. */
  relations: z.array(PartnerRelation),
});
export type BatchInList = z.infer<typeof BatchInList>;

/** One link of the family line that is a batch. */
export const BatchInLine = z.object({
  id: z.uuid(),
  label: z.string().nullable(),
  stage: Stage,
  openedOn: Day,
  balance: z.int(),
  place: Named.nullable(),
});
export type BatchInLine = z.infer<typeof BatchInLine>;

/** From the wild tree to this batch, and on to what came of it. */
export const FamilyLine = z.object({
  stand: Named.nullable(),
  donorTree: Labelled.nullable(),
  /** Donor trees that it may be of, while it is not known which. */
  candidates: z.array(Labelled),
  trip: z.object({ id: z.uuid(), wentOn: Day }).nullable(),
  bundle: z.object({ id: z.uuid(), cuttings: z.int(), shoot: z.string().nullable(), foliage: z.string().nullable(), base: z.string().nullable() }).nullable(),
  sticking: z
    .object({
      id: z.uuid(), stuckOn: Day.nullable(), generation: z.int(), secondTryOfId: z.uuid().nullable(), fromBatchId: z.uuid().nullable(),
      recipe: z.object({ versionId: z.uuid(), name: z.string(), version: z.int() }).nullable(),
    })
    .nullable(),
  /** The batches that it came through, the first one first, without itself. */
  ancestors: z.array(BatchInLine),
  /** What a mixed batch was made of. */
  parts: z.array(BatchInLine.extend({ n: z.int() })),
  children: z.array(BatchInLine),
});
export type FamilyLine = z.infer<typeof FamilyLine>;

/** What was said, by kind: the shapes of entries. */
const Said = z.looseObject({ kind: z.string() });

/** One entry of a batch's history, as it was written, with what became of it since. */
export const HistoryItem = z.object({
  id: z.uuid(),
  kind: z.string(),
  observedOn: Day,
  minute: z.int().nullable(),
  said: Said,
  note: z.string().nullable(),
  seenBy: z.string().nullable(),
  writtenBy: z.string().nullable(),
  writtenAt: z.string(),
  receivedAt: z.string(),
  door: z.enum(['desk', 'outbox', 'import', 'api']),
  /** What it says after its corrections; null once it is withdrawn. */
  now: z.object({ observedOn: Day, minute: z.int().nullable(), said: Said }).nullable(),
  /** To be named as `sawVersion` by the next correction. */
  latestVersionId: z.uuid(),
  /** Corrections in content order, rivals too. */
  corrections: z.array(
    z.object({
      id: z.uuid(), kind: z.enum(['withdrawn', 'replaced']), reason: z.string(), said: Said,
      writtenBy: z.string().nullable(), writtenAt: z.string(), receivedAt: z.string(), isEffective: z.boolean(),
    }),
  ),
  /** What it booked in this batch. */
  movements: z.array(MovementShown),
  flags: z.array(z.object({ code: FlagCode, n: z.int().nullable(), decision: z.string().nullable() })),
  /** Whether the caller may correct it now. */
  mayMend: z.boolean(),
});
export type HistoryItem = z.infer<typeof HistoryItem>;

/** Where a batch stood, and what went wrong or was done there meanwhile. */
export const StayShown = z.object({
  place: Named.nullable(),
  from: Day,
  until: Day.nullable(),
  incidents: z.array(
    z.object({
      entryId: z.uuid(), what: IncidentKind, severity: Severity, from: Day,
      /** Empty while it is open. */
      until: Day.nullable(),
      detail: z.string().nullable(), placeName: z.string(),
    }),
  ),
  /** Of the place, not of the batch itself: those are entries of its history. */
  treatments: z.array(z.object({ entryId: z.uuid(), what: TreatmentKind, day: Day, product: z.string().nullable(), placeName: z.string() })),
});
export type StayShown = z.infer<typeof StayShown>;

/** Under which regime a batch stood, read from where it stood when. */
export const ExposureShown = z.object({
  from: Day,
  /** Empty: still so. */
  until: Day.nullable(),
  /** Null: nobody told one for that place or any around it. */
  regime: Regime.extend({ placeName: z.string() }).nullable(),
});
export type ExposureShown = z.infer<typeof ExposureShown>;

/** Answer of GET batches/:id. */
export const Batch = BatchInList.extend({
  /** All labels ever given to it, the newest first. */
  labels: z.array(z.string()),
  container: z.string().nullable(),
  medium: z.string().nullable(),
  /** For whom plants of it are set aside. Empty to partners, who are told of no request. */
  setAside: z.array(z.object({ requestId: z.uuid(), who: z.string(), n: z.int() })),
  books: BooksShown,
  line: FamilyLine,
  /** In content order. */
  history: z.array(HistoryItem),
  stays: z.array(StayShown),
  /** The first one first. */
  exposure: z.array(ExposureShown),
});
export type Batch = z.infer<typeof Batch>;

/** Answer of GET donor-trees/:id/descent: all that came of one wild tree. */
export const Descent = z.object({
  donorTree: Labelled.extend({ stand: Named }),
  stickings: z.array(
    z.object({
      id: z.uuid(), stuckOn: Day.nullable(), generation: z.int(), secondTryOfId: z.uuid().nullable(),
      recipe: z.object({ versionId: z.uuid(), name: z.string(), version: z.int() }).nullable(),
      /** Plants that were stuck or received into it. */
      opened: z.int(),
      batches: z.array(BatchInLine),
    }),
  ),
  /** Plants alive now. */
  plantsByStage: z.partialRecord(Stage, z.int()),
  /** Where they are planted out. */
  sites: z.array(z.object({ place: Named, plants: z.int() })),
  /** Mixed batches that hold, or may hold, plants of this tree; not in the numbers above. */
  mixtures: z.array(BatchInLine),
});
export type Descent = z.infer<typeof Descent>;
