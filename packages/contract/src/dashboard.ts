import { z } from 'zod';
import { Stage } from './entry/words.ts';
import { FunnelStage, ReadingFilter, StageDiversity } from './reading.ts';
import { Day, PageQuery } from './shapes.ts';

/** The day on which a reading was taken, and what this programme calls rooted. */
const reading = { asOf: Day, rootedMeans: z.string() };

/** A filter, and which part of a long list. */
export const ReadingPart = ReadingFilter.extend(PageQuery.shape);
export type ReadingPart = z.infer<typeof ReadingPart>;

/** One stand and species in a line: plants and donor trees side by side, and what needs eyes. */
export const ReadingLine = z.object({
  key: z.string(),
  /** Empty where the stand is not known. */
  name: z.string(),
  standId: z.string().nullable(), taxonId: z.string(), taxon: z.string(), commonName: z.string().nullable(),
  /** Plants here now at all stages, and of them those planted out. */
  here: z.int(), planted: z.int(),
  donors: z.object({ came: z.int(), left: z.int() }),
  /** Donor trees that may be lost soon. */
  atRisk: z.int(),
  /** Of the cuttings, the share whose end is not known; null where no cutting came. */
  undecidedShare: z.number().min(0).max(1).nullable(),
  /** The four stages: plants and donor trees that came so far. */
  stages: z.array(z.object({ stage: Stage, plants: z.int(), donors: z.int() })),
});
export type ReadingLine = z.infer<typeof ReadingLine>;

/** Donor trees at risk first, then those with most donor trees lost. The next part stands in `Link`. */
export const ReadingLines = z.object({
  ...reading,
  /** Of all lines, not only of this part. */
  inAll: z.object({ lines: z.int(), here: z.int(), planted: z.int(), atRisk: z.int() }),
  lines: z.array(ReadingLine),
});
export type ReadingLines = z.infer<typeof ReadingLines>;

const plantsAt = { cutting: z.int(), liner: z.int(), potted: z.int(), planted: z.int() };

export const IncidentOnAxis = z.object({
  entryId: z.string(), placeId: z.string(), place: z.string(), what: z.string(), severity: z.enum(['slight', 'serious', 'severe']),
  /** Since it was last known to be good; `until` is null while it goes on. */
  from: Day, until: Day.nullable(),
  /** Batches of this reading that stood there in that time. */
  batches: z.int(),
});
export type IncidentOnAxis = z.infer<typeof IncidentOnAxis>;

/** Plants at each stage over time. */
export const TimeAxis = z.object({
  ...reading,
  /** Whole weeks between two points. */
  weeks: z.int().min(1),
  /** Plants on hand at the end of each day named; the last one is the day of the reading. */
  points: z.array(z.object({ day: Day, ...plantsAt, /** Batches counted or checked since the point before. */ looked: z.int() })),
  /** The latest first, 100 at most. */
  incidents: z.array(IncidentOnAxis),
});
export type TimeAxis = z.infer<typeof TimeAxis>;

export const SiteLine = z.object({
  siteId: z.string(), name: z.string(),
  came: z.int(), alive: z.int(), notFound: z.int(), lost: z.int(), donors: z.int(),
  lastCheckedOn: Day.nullable(),
});
export type SiteLine = z.infer<typeof SiteLine>;

export const SiteLines = z.object({ ...reading, sites: z.array(SiteLine) });
export type SiteLines = z.infer<typeof SiteLines>;

/** Trees of one donor tree at a site. Null: of which donor tree they are is not known. */
export const DonorAtSite = z.object({
  donor: z.object({ donorId: z.string(), treeId: z.string(), label: z.string() }).nullable(),
  stand: z.string().nullable(), taxon: z.string(), commonName: z.string().nullable(),
  came: z.int(), alive: z.int(), notFound: z.int(), died: z.int(), unaccounted: z.int(), left: z.int(),
});
export type DonorAtSite = z.infer<typeof DonorAtSite>;

/** One stand and species at a site. */
export const StandAtSite = z.object({
  standId: z.string().nullable(), stand: z.string().nullable(), taxonId: z.string().nullable(), taxon: z.string(), commonName: z.string().nullable(),
  planted: FunnelStage,
  diversity: StageDiversity,
});
export type StandAtSite = z.infer<typeof StandAtSite>;

/** What was seen at a plot on a day: trees, as far as the check told of them. */
export const CheckAtSite = z.object({ day: Day, plotId: z.string(), plot: z.string(), alive: z.int(), dead: z.int(), notFound: z.int(), notLooked: z.int() });
export type CheckAtSite = z.infer<typeof CheckAtSite>;

export const SiteReading = z.object({
  ...reading,
  site: z.object({ id: z.string(), name: z.string() }),
  stands: z.array(StandAtSite),
  /** The smallest share alive first; the 300 that need eyes most. */
  donors: z.array(DonorAtSite),
  donorsInAll: z.int(),
  /** The latest first, 200 at most. */
  checks: z.array(CheckAtSite),
});
export type SiteReading = z.infer<typeof SiteReading>;
