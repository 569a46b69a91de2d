import { z } from 'zod';
import { BatchInList } from './batch.ts';
import { Container, Dead, LabelCode, Plants, SomePlants } from './entry/words.ts';
import { Day, Id, orNothing, PageQuery, Prose, Words } from './shapes.ts';
import { WrittenEntry } from './written.ts';

export const WorkListKind = z.enum(['pottingUp', 'rootCheck', 'calling', 'hardeningOff', 'plantingDay', 'siteCheck']);
export type WorkListKind = z.infer<typeof WorkListKind>;

/** Which batches a list was made of. What is not told narrows nothing. */
export const WorkListAsked = z.strictObject({
  /** What stands there, and in all that lies in it. */
  placeId: orNothing(Id),
  standId: orNothing(Id),
  taxonId: orNothing(Id),
  /** For root checks and calling: days since sticking before which a tray is left alone. Left out: the usual ones. */
  days: orNothing(z.int().min(0).max(10_000)),
  /** Only batches with so many plants or fewer. */
  atMost: orNothing(SomePlants),
  /** Where plants are to go: the site of a planting day, the bench for potted ones. */
  toPlaceId: orNothing(Id),
});
export type WorkListAsked = z.infer<typeof WorkListAsked>;

/** Body of POST. The batches are chosen then, in walking order, and stay as they were printed. */
export const NewWorkList = z.strictObject({ id: Id, kind: WorkListKind, asked: WorkListAsked });
export type NewWorkList = z.infer<typeof NewWorkList>;

/** A sheet that was printed, or may be: in a list, with sums instead of lines. */
export const WorkListInList = z.object({
  id: z.uuid(),
  kind: WorkListKind,
  asked: WorkListAsked,
  madeBy: z.uuid(),
  madeAt: z.string(),
  lines: z.int(),
  /** Lines that have been typed back. */
  typed: z.int(),
});
export type WorkListInList = z.infer<typeof WorkListInList>;

/** One line of a sheet, with the batch as the books have it now. */
export const WorkListLine = z.object({
  /** As printed, from 1. */
  number: z.int(),
  batch: BatchInList.extend({ container: z.string().nullable(), /** The day its rooted plants were last told of. */ rootedOn: Day.nullable() }),
  /** Names of the places it stands in, the outermost first. */
  path: z.array(z.string()),
  /** When and by whom it was typed back; null while it was not. */
  typed: z.object({ at: z.string(), by: z.uuid(), entryIds: z.array(z.uuid()) }).nullable(),
});
export type WorkListLine = z.infer<typeof WorkListLine>;

export const WorkList = WorkListInList.omit({ lines: true, typed: true }).extend({ lines: z.array(WorkListLine) });
export type WorkList = z.infer<typeof WorkList>;

export const WorkListQuery = PageQuery.extend({ kind: WorkListKind.optional() });
export type WorkListQuery = z.infer<typeof WorkListQuery>;

/**
 * What stands on one line of a sheet. Which of it is asked depends on the kind of the list:
 * anything else is refused with `work-list/not-asked`. Blank is not 0.
 */
export const TypedLine = z.strictObject({
  /** The printed number. */
  number: z.int().min(1),
  alive: Plants.optional(),
  rooted: Plants.optional(),
  callused: Plants.optional(),
  notFound: Plants.optional(),
  notLooked: Plants.optional(),
  dead: z.array(Dead).max(20).default([]),
  lifted: SomePlants.optional(),
  potted: SomePlants.optional(),
  planted: SomePlants.optional(),
  /** Green and unrooted, thrown out. */
  called: SomePlants.optional(),
  /** The whole batch went to `placeId`. */
  moved: z.literal(true).optional(),
  /** Where those that went on stand now. */
  placeId: Id.optional(),
  label: LabelCode.optional(),
  container: Container.optional(),
  positions: z.array(Words).max(2_000).optional(),
  leavesNone: z.boolean().optional(),
  note: Prose.optional(),
});
export type TypedLine = z.infer<typeof TypedLine>;

/** A sheet, or some lines of it, typed back: day and people once, then line by line. */
export const TypedSheet = z.strictObject({
  observedOn: Day,
  seenBy: Id.optional(),
  workdayId: Id.optional(),
  writtenAt: z.iso.datetime({ offset: true }),
  /** How roots were looked at, on a root check. */
  look: z.enum(['tug', 'lifted']).default('tug'),
  lines: z.array(TypedLine).min(1, { error: 'must hold at least one line' }).max(500, { error: 'at most 500 lines a request' })
    .refine((lines) => new Set(lines.map(({ number }) => number)).size === lines.length, { error: 'names a line twice' }),
  /** Numbers of lines that cannot be or look like a slip, to be taken as they stand on the paper, and flagged. */
  confirm: z.array(z.int()).default([]),
});
export type TypedSheet = z.infer<typeof TypedSheet>;

/** What became of a line: written whole or not at all. */
export const TypedLineAnswer = WrittenEntry.pick({ flags: true, problem: true }).extend({
  number: z.int(),
  status: z.enum(['written', 'already', 'refused']),
});
export type TypedLineAnswer = z.infer<typeof TypedLineAnswer>;

export const TypedSheetAnswer = z.object({ lines: z.array(TypedLineAnswer) });
export type TypedSheetAnswer = z.infer<typeof TypedSheetAnswer>;

/** Answer of GET trips/:id/tray-cards: what stands on cards for a sticking night. */
export const TrayCards = z.object({
  wentOn: Day,
  stand: z.object({ id: z.uuid(), name: z.string() }),
  bundles: z.array(
    z.object({
      id: z.uuid(),
      donorTree: z.object({ id: z.uuid(), label: z.string() }),
      taxon: z.string(),
      cuttings: z.int(),
      /** Not stuck yet. */
      left: z.int(),
      /** Trays that hold some of it. */
      stuck: z.array(
        z.object({
          batchId: z.uuid(), label: z.string().nullable(), n: z.int(), rows: z.string().nullable(), place: z.string(), medium: z.string().nullable(),
          stuckOn: Day, recipe: z.string().nullable(),
        }),
      ),
    }),
  ),
});
export type TrayCards = z.infer<typeof TrayCards>;
