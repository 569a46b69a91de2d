import type { DaysBasis, DueItem, TaxonDays } from '@sprigline/contract';
import { cuttingsDue, DEFAULT_DAYS, type Due, gradeCheckDue, putOffOf, roundDue, showsOn, siteCheckDue } from '@sprigline/domain';
import type { Asked, RankedPlace } from './due-places.queries.ts';
import type { CuttingsRow, Living, Standing } from './due.queries.ts';

/** Where nobody says how often: plants in a nursery are looked at every other week. Sites have their own checks. */
const ROUND_EVERY_DAYS = 14;

export interface Known extends Living {
  readonly asked: Asked;
  readonly placeOf: ReadonlyMap<string, RankedPlace>;
  readonly days: readonly TaxonDays[];
}

/** Something that is due, before its batch is named; with the rank of its place in walking order. */
export type Waiting = Omit<DueItem, 'batch'> & { readonly batch: { readonly id: string } | null; readonly rank: number };

type Thing = Pick<Waiting, 'batch' | 'season' | 'check' | 'batches' | 'plants' | 'since' | 'wait'>;

/** Everything that is due or will be, unsorted. Days come from the domain; here they only find their things. */
export function allDue(known: Known): Waiting[] {
  const { placeOf } = known;
  const ours = (id: string): RankedPlace | undefined => {
    const place = placeOf.get(id);
    return place?.isTheirs ? undefined : place;
  };
  const putOffs = putOffsByThing(known.asked.putOffs);
  const item = (due: Due, at: RankedPlace, thing: Thing): Waiting => {
    const walk = placeOf.get(at.walkId) ?? at;
    const putOff = putOffOf(due.dueOn, putOffs.get(nameOf({ kind: due.kind, placeId: at.id, batchId: thing.batch?.id ?? null, seasonYear: thing.season?.year ?? null })) ?? []);
    return {
      key: [due.kind, thing.batch?.id ?? at.id, ...(thing.season ? [thing.season.year] : [])].join('.'), rank: at.rank,
      ...due, day: showsOn(due.dueOn, putOff), place: { id: at.id, name: at.name, kind: at.kind }, walk: { id: walk.id, name: walk.name }, ...thing,
      putOff: putOff ? { until: putOff.until, reason: putOff.reason, by: putOff.by, at: putOff.at } : null,
    };
  };
  return [...rounds(known, ours, item), ...cuttings(known, ours, item), ...gradeChecks(known, ours, item), ...siteChecks(known, ours, item)];
}

type PutOff = Asked['putOffs'][number];

/** The same batch wherever it was carried meanwhile; else the same place and season. */
const nameOf = ({ kind, batchId, placeId, seasonYear }: Pick<PutOff, 'kind' | 'placeId' | 'batchId' | 'seasonYear'>): string =>
  batchId ? `${kind} ${batchId}` : `${kind} ${placeId} ${seasonYear}`;

/** Of one thing, the newest first, as they came. */
function putOffsByThing(putOffs: readonly PutOff[]): Map<string, PutOff[]> {
  const byThing = new Map<string, PutOff[]>();
  for (const one of putOffs) byThing.set(nameOf(one), [...(byThing.get(nameOf(one)) ?? []), one]);
  return byThing;
}

type Ours = (id: string) => RankedPlace | undefined;
type ToItem = (due: Due, at: RankedPlace, thing: Thing) => Waiting;
const NOTHING_MORE = { batch: null, season: null, check: null };

function rounds({ standing }: Known, ours: Ours, item: ToItem): Waiting[] {
  const there = gathered(standing, (one) => ours(one.placeId)?.walkId);
  return [...there].flatMap(([id, sum]) => {
    const walk = ours(id);
    const days = walk?.everyDays ?? (walk?.siteId ? null : ROUND_EVERY_DAYS);
    if (!walk || days === null) return [];
    const basis: DaysBasis = walk.toldById === null ? 'default' : walk.toldById === id ? 'written' : 'above';
    return item(roundDue(sum.oldestLookOn, days), walk, { ...NOTHING_MORE, batches: sum.batches, plants: sum.plants, since: sum.oldestLookOn, wait: { days, basis, stickings: null } });
  });
}

function cuttings(known: Known, ours: Ours, item: ToItem): Waiting[] {
  const daysOf = new Map(known.days.map((one) => [one.taxonId, one]));
  return known.cuttings.flatMap((row) => {
    const at = ours(row.placeId);
    if (!at) return [];
    const own = daysOf.get(row.taxonId ?? '') ?? USUAL;
    return cuttingsDue(nowOf(row), own).map((due) => {
      const { days: n, basis, stickings } = own[due.kind as 'firstCheck'];
      return item(due, at, { ...oneBatch(row), since: row.since, wait: { days: n, basis, stickings: stickings ?? null } });
    });
  });
}

function gradeChecks({ potted, asked: { gradeEveryDays } }: Known, ours: Ours, item: ToItem): Waiting[] {
  const wait = { days: gradeEveryDays, basis: 'written' as const, stickings: null };
  return potted.flatMap((row) => {
    const at = ours(row.placeId);
    return at ? item(gradeCheckDue(row.lookedOn, gradeEveryDays), at, { ...oneBatch(row), since: row.lookedOn, wait }) : [];
  });
}

const oneBatch = ({ id, plants }: { readonly id: string; readonly plants: number }) => ({ batch: { id }, season: null, check: null, batches: 1, plants });

/** For mixed batches and others whose species nobody knows. */
const usual = (days: number) => ({ days, basis: 'default' as const });
const USUAL: Omit<TaxonDays, 'taxonId'> = { firstCheck: usual(DEFAULT_DAYS.firstCheck), verdict: usual(DEFAULT_DAYS.verdict), movingOn: usual(DEFAULT_DAYS.movingOn) };

const nowOf = ({ rootedNow, strongLookOn, calledOn, ...row }: CuttingsRow) =>
  ({ ...row, rootedNow: rootedNow ?? undefined, strongLookOn: strongLookOn ?? undefined, calledOn: calledOn ?? undefined });

function siteChecks({ planted, asked }: Known, ours: Ours, item: ToItem): Waiting[] {
  const seasons = gathered(planted, (one) => {
    const siteId = ours(one.placeId)?.siteId;
    return siteId ? `${siteId} ${one.seasonYear}` : undefined;
  });
  return [...seasons].flatMap(([key, sum]) => {
    const [siteId = '', year = ''] = key.split(' ');
    const site = ours(siteId);
    const due = siteCheckDue(Number(year), asked.seasonStartsIn, sum.oldestLookOn);
    if (!site || !due) return [];
    const season = { year: Number(year), name: seasonName(Number(year), asked.seasonStartsIn) };
    return item(due, site, { batch: null, season, check: due.check, batches: sum.batches, plants: sum.plants, since: sum.oldestLookOn, wait: { days: null, basis: 'season', stickings: null } });
  });
}

const seasonName = (year: number, startsIn: number): string => (startsIn === 1 ? String(year) : `${year}/${String((year + 1) % 100).padStart(2, '0')}`);

/** Sums of what stands together, with the look that is longest ago. */
function gathered<S extends Standing>(all: readonly S[], keyOf: (one: S) => string | undefined): Map<string, Omit<Standing, 'placeId'>> {
  const sums = new Map<string, Omit<Standing, 'placeId'>>();
  for (const one of all) {
    const key = keyOf(one);
    if (key === undefined) continue;
    const before = sums.get(key);
    sums.set(key, {
      batches: one.batches + (before?.batches ?? 0),
      plants: one.plants + (before?.plants ?? 0),
      oldestLookOn: before && before.oldestLookOn < one.oldestLookOn ? before.oldestLookOn : one.oldestLookOn,
    });
  }
  return sums;
}
