import { z } from 'zod';
import { DuePlaces } from './due.ts';
import { Role } from './people.ts';
import { Stage } from './entry/words.ts';
import { RequestState } from './request.ts';
import { Day, Id } from './shapes.ts';

const Named = z.object({ id: z.uuid(), name: z.string() });
const Share = z.number().min(0).max(1);
const Interval = z.object({ lower: Share, upper: Share });

/** The books as of this day; today where none is named. Entries that arrive later can still change earlier days. */
const asOf = Day.optional();

/** What a report says at its head: the day, the programme, and what it calls rooted. */
const head = { asOf: Day, today: Day, programme: z.string(), rootedMeans: z.string() };

/** Whose trees a letter to a landowner is about: exactly one is named. */
export const LandownerQuery = z
  .strictObject({ standId: Id.optional(), partnerId: Id.optional(), /** Needs the grant *see exact places*. */ permissionId: Id.optional(), asOf })
  .refine((asked) => [asked.standId, asked.partnerId, asked.permissionId].filter((id) => id !== undefined).length === 1, {
    path: ['standId'], error: 'name one of: stand, partner, permission',
  });
export type LandownerQuery = z.infer<typeof LandownerQuery>;

/** What came of the cuttings of one donor tree, or of all. stuck + received + found = alive + lost + given out + mixed away. */
const Came = {
  /** Cuttings taken from the tree on trips. */
  taken: z.int(),
  stuck: z.int(),
  received: z.int(),
  found: z.int(),
  /** Cuttings that went on as young plants, or further. */
  rooted: z.int(),
  potted: z.int(),
  planted: z.int(),
  lost: z.int(),
  /** Out of the programme. */
  givenOut: z.int(),
  /** Now in batches in which several trees are not told apart. */
  mixedAway: z.int(),
  alive: z.int(),
  aliveBy: z.record(Stage, z.int()),
};
export const LandownerTree = z.object({ id: z.uuid(), label: z.string(), stand: z.string(), taxon: z.string(), ...Came, sites: z.array(z.object({ name: z.string(), planted: z.int(), alive: z.int() })) });
export type LandownerTree = z.infer<typeof LandownerTree>;

export const LandownerReport = z.object({
  ...head,
  subject: z.object({ kind: z.enum(['stand', 'partner', 'permission']), name: z.string() }),
  trees: z.array(LandownerTree),
  sum: z.object(Came),
  sites: z.array(z.object({ name: z.string(), planted: z.int(), alive: z.int() })),
  /** Plants promised in return and given back to them; null without the grant *see exact places*. */
  owed: z.object({ plants: z.int(), givenBack: z.int().nullable() }).nullable(),
});
export type LandownerReport = z.infer<typeof LandownerReport>;

export const FunderQuery = z.strictObject({
  siteId: Id.optional(), taxonId: Id.optional(),
  /** Year in which the season of planting began: 2025 for 2025/26. */
  season: z.coerce.number().int().min(1900).max(2999).optional(),
  asOf,
});
export type FunderQuery = z.infer<typeof FunderQuery>;

const Survival = {
  planted: z.int(), givenOut: z.int(), notChecked: z.int(), notLooked: z.int(), alive: z.int(), dead: z.int(), notFound: z.int(),
  rates: z.object({ low: Share, high: Share.optional(), wilsonLow: Interval, wilsonHigh: Interval.optional() }).optional(),
  byUnit: Interval.extend({ unit: z.enum(['plot', 'donor']), units: z.int() }).optional(),
  donors: z.int(),
  plots: z.int(),
  /** Days between planting and the last look at it, youngest and oldest. */
  ageDays: z.object({ least: z.int(), most: z.int() }).nullable(),
  /** First and last day of planting, and of the last looks. */
  plantedOn: z.object({ first: Day, last: Day }).nullable(),
  checkedOn: z.object({ first: Day, last: Day }).nullable(),
};
export const FunderRow = z.object({ site: z.string(), season: z.string(), taxon: z.string(), ...Survival });
export type FunderRow = z.infer<typeof FunderRow>;

/** Trees planted out, and how many live: by site, season of planting and species, and all of one species together. */
export const FunderReport = z.object({
  ...head,
  rows: z.array(FunderRow),
  totals: z.array(z.object({ taxon: z.string(), ...Survival })),
  choices: z.object({ sites: z.array(Named), taxa: z.array(Named), seasons: z.array(z.object({ year: z.int(), name: z.string() })) }),
});
export type FunderReport = z.infer<typeof FunderReport>;

/** What a new coordinator has to know today. */
export const HandoverReport = z.object({
  ...head,
  places: z.array(z.object({ id: z.uuid(), name: z.string(), kind: z.string(), depth: z.int(), batches: z.int(), plants: z.int(), note: z.string().nullable() })),
  people: z.array(z.object({ name: z.string(), role: Role.nullable() })),
  recipes: z.array(z.object({ name: z.string(), version: z.int(), hormone: z.string().nullable(), hormonePpm: z.int().nullable(), medium: z.string().nullable(), wound: z.string().nullable(), steps: z.string().nullable(), madeOn: Day })),
  /** What falls due in the next four weeks, by where one walks. */
  due: DuePlaces,
  /** Requests that are neither gone nor withdrawn, the day on which they are wanted first. `covered`: set aside, and still there. */
  promised: z.array(z.object({ id: z.uuid(), who: z.string(), taxon: z.string(), stage: Stage, plants: z.int(), wantedOn: Day.nullable(), state: RequestState, covered: z.int() })),
  /** Trips not wholly stuck yet. */
  unstuck: z.array(z.object({ stand: z.string(), wentOn: Day, cuttings: z.int() })),
  held: z.array(z.object({ id: z.uuid(), label: z.string().nullable(), n: z.int(), place: z.string(), since: Day.nullable(), reason: z.string().nullable() })),
  reviews: z.array(z.object({ code: z.string(), n: z.int(), oldest: Day })),
  /** Null without the grant *see exact places*. */
  permissions: z.array(z.object({ id: z.uuid(), grantedBy: z.string(), land: z.string(), validUntil: Day.nullable(), used: z.int(), quota: z.int().nullable(), plantsOwedBack: z.int() })).nullable(),
});
export type HandoverReport = z.infer<typeof HandoverReport>;
