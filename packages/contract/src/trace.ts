import { z } from 'zod';
import { Stage } from './entry/words.ts';
import { Day, Id, Words } from './shapes.ts';

/** What a trace may begin at. */
export const TRACED = ['batchId', 'placeId', 'fillingId', 'mediumLot', 'donorTreeId', 'tripId'] as const;
export type Traced = (typeof TRACED)[number];

/** Most batches that one answer holds. */
export const MOST_TRACED = 20_000;

/** Which trace is asked for: it begins at exactly one thing. */
export const TraceQuery = z
  .strictObject({
    batchId: Id.optional(),
    /** A house, bench, tray, site or plot, with all that lay in it. */
    placeId: Id.optional(),
    /** All that stood in a tray between this filling and the next. */
    fillingId: Id.optional(),
    /** A lot of medium, as its bag says. */
    mediumLot: Words.optional(),
    donorTreeId: Id.optional(),
    tripId: Id.optional(),
    /** For a place: only what stood there from this day on. */
    from: Day.optional(),
    /** For a place: only what stood there until this day. */
    until: Day.optional(),
    limit: z.coerce.number().int().min(1).max(MOST_TRACED).default(1_000),
  })
  .refine((asked) => TRACED.filter((name) => asked[name] !== undefined).length === 1, {
    path: ['batchId'], error: 'name one thing: batch, place, tray filling, lot of medium, donor tree or trip',
  })
  .refine((asked) => asked.from === undefined || asked.until === undefined || asked.from <= asked.until, {
    path: ['until'], error: 'must not be before it begins',
  });
export type TraceQuery = z.infer<typeof TraceQuery>;

const Named = z.object({ id: z.uuid(), name: z.string() });

/** Who has plants now: the programme itself, or a partner of it. */
const Holder = Named.nullable();

/** `itself`: what was asked about; `from`: plants of it came from there; `to`: plants of it went there. */
export const Way = z.enum(['itself', 'from', 'to']);
export type Way = z.infer<typeof Way>;

/** A batch of a trace. */
export const TracedBatch = z.object({
  id: z.uuid(),
  label: z.string().nullable(),
  way: Way,
  /** Its plants may have nothing to do with it: which donor tree they are of is not known. */
  perhaps: z.boolean(),
  stage: Stage,
  donorTree: z.object({ id: z.uuid(), label: z.string() }).nullable(),
  stand: Named.nullable(),
  taxon: z.string().nullable(),
  /** Plants here now; 0 where all have gone or died. */
  n: z.int(),
  held: z.boolean(),
  place: Named.nullable(),
  /** From the outermost place inward, such as House A, bench 1, tray 2. */
  path: z.array(z.string()),
  /** Standing there since, or last stood there from. */
  since: Day.nullable(),
  openedOn: Day,
  /** The partner in whose hands it is; null for the programme itself. */
  holder: Holder,
  /** The batches that its plants came from, with how many came and the first day. */
  from: z.array(z.object({ id: z.uuid(), label: z.string().nullable(), n: z.int(), day: Day })),
});
export type TracedBatch = z.infer<typeof TracedBatch>;

/** A batch that is no kin, and stood at the same place in the same days. */
export const StoodBeside = z.object({
  id: z.uuid(),
  label: z.string().nullable(),
  stage: Stage,
  donorTree: z.object({ id: z.uuid(), label: z.string() }).nullable(),
  n: z.int(),
  held: z.boolean(),
  /** Where they stood together. */
  place: Named,
  path: z.array(z.string()),
  from: Day,
  /** Null while they still stand together. */
  until: Day.nullable(),
  /** Where it stands now. */
  nowAt: Named.nullable(),
  nowPath: z.array(z.string()),
  holder: Holder,
});
export type StoodBeside = z.infer<typeof StoodBeside>;

/** Plants that left the programme. */
export const GivenOutside = z.object({
  batchId: z.uuid(), label: z.string().nullable(), entryId: z.uuid(), n: z.int(), day: Day,
  /** To whom, in the words of the entry. */
  to: z.string().nullable(),
});
export type GivenOutside = z.infer<typeof GivenOutside>;

/** Answer of GET trace: where from, where to, what stood beside, who has it now. */
export const Trace = z.object({
  /** The day of the answer, in the programme's zone. */
  asOf: Day,
  subject: z.object({ kind: z.enum(TRACED), id: z.string(), name: z.string(), from: Day.nullable(), until: Day.nullable() }),
  /** The wild trees at the beginning of the line, and the trips on which it was collected. */
  donorTrees: z.array(z.object({ id: z.uuid(), label: z.string(), stand: z.string(), perhaps: z.boolean() })),
  trips: z.array(z.object({ id: z.uuid(), wentOn: Day, stand: z.string() })),
  batches: z.array(TracedBatch),
  beside: z.array(StoodBeside),
  outside: z.array(GivenOutside),
  /** What is there in all, so that a shortened list says so. */
  sums: z.object({ batches: z.int(), plants: z.int(), beside: z.int(), givenOutside: z.int() }),
  /** More was found than is shown, or looked for: ask from a smaller place, or for more. */
  isCut: z.boolean(),
});
export type Trace = z.infer<typeof Trace>;
