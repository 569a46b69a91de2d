import { z } from 'zod';
import { ReadingFilter } from './reading.ts';
import { Id } from './shapes.ts';

export const LeaveOrCallQuery = ReadingFilter.extend({ batchId: Id.optional(), limit: z.coerce.number().int().min(1).max(500).default(60) });
export type LeaveOrCallQuery = z.infer<typeof LeaveOrCallQuery>;

const Share = z.number().min(0).max(1);

/** What the figures of one species rest on. */
export const RootingGround = z.object({
  taxonId: z.string(), taxon: z.string(), commonName: z.string().nullable(),
  /** The programme's own cuttings that were followed, and those of them that rooted. */
  cuttings: z.int(), rooted: z.int(), donors: z.int(),
  /** What is held beside them: weighs as many cuttings as it says. */
  prior: z.object({ plants: z.number(), mean: Share, firstRootsDays: z.int(), basis: z.enum(['species-row', 'common-practice']), source: z.string() }),
  /** Before so many days after sticking there is nothing to see: from own cuttings, or from what is published. */
  firstRoots: z.object({ days: z.int(), basis: z.enum(['own', 'prior']) }),
});
export type RootingGround = z.infer<typeof RootingGround>;

/** A tray with green cuttings that are not known to have roots. What to do with it is for people to say. */
export const WaitingTray = z.object({
  batchId: z.string(), label: z.string().nullable(), place: z.object({ id: z.string(), name: z.string() }), donorTree: z.string().nullable(), taxonId: z.string(),
  stuckOn: z.string(), days: z.int(),
  /** Alive and not known to have roots. */
  green: z.int(),
  verdictOn: z.string(),
  /** `beyond-history`: nobody has watched such cuttings so long, and there are no figures. `mostly-prior`: too little is known here. */
  state: z.enum(['told', 'mostly-prior', 'beyond-history']),
  /** Own cuttings that waited and were watched as long. */
  watchedAsLong: z.int(),
  /** The day before which there is nothing to see, while it has not come. */
  handsOffUntil: z.string().nullable(),
  /** Chance that one that is green still roots. */
  chance: Share.nullable(),
  /** Plants expected: in the next month, all in all, and for each month until then. */
  nextMonth: z.number().nullable(), inAll: z.number().nullable(), months: z.int().nullable(), perMonth: z.number().nullable(),
});
export type WaitingTray = z.infer<typeof WaitingTray>;

export const LeaveOrCall = z.object({
  asOf: z.string(), rootedMeans: z.string(),
  inAll: z.int(),
  /** What the bench brings in, most a month first; those without figures last. */
  trays: z.array(WaitingTray),
  grounds: z.array(RootingGround),
});
export type LeaveOrCall = z.infer<typeof LeaveOrCall>;
