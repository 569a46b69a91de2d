import type { DaysBasis, DueItem, TaxonDays } from '@sprigline/contract';
import { cuttingsDue, DEFAULT_DAYS, type Due, gradeCheckDue, putOffOf, roundDue, showsOn, siteCheckDue } from '@sprigline/domain';
import type { BatchRow, PlantedThere, Standing } from './due.queries.ts';
import type { Asked, PlaceRow } from './due-places.queries.ts';

/** Where nobody says how often: plants in a nursery are looked at every other week. Sites have their own checks. */
const ROUND_EVERY_DAYS = 14;

export interface Known {
  readonly asked: Asked;
  readonly places: readonly PlaceRow[];
  readonly days: readonly TaxonDays[];
  readonly batches: readonly BatchRow[];
  readonly standing: readonly Standing[];
  readonly planted: readonly PlantedThere[];
}

type Thing = Pick<DueItem, 'place' | 'batch' | 'season' | 'check' | 'batches' | 'plants' | 'since' | 'wait'>;

/** Everything that is due or will be, unsorted. Days come from the domain; here they only find their things. */
export function allDue(known: Known): DueItem[] {
  const placeOf = new Map(known.places.map((place) => [place.id, place]));
  const ours = (id: string): PlaceRow | undefined => {
    const place = placeOf.get(id);
    return place?.isTheirs ? undefined : place;
  };
  const item = (due: Due, at: PlaceRow, thing: Omit<Thing, 'place'>): DueItem => {
    const walk = placeOf.get(at.walkId) ?? at;
    const about = { kind: due.kind, placeId: at.id, batchId: thing.batch?.id ?? null, seasonYear: thing.season?.year ?? null };
    const putOff = putOffOf(due.dueOn, known.asked.putOffs.filter((one) => isOf(one, about)));
    return {
      key: [due.kind, thing.batch?.id ?? at.id, ...(thing.season ? [thing.season.year] : [])].join('.'),
      ...due, day: showsOn(due.dueOn, putOff), place: { id: at.id, name: at.name, kind: at.kind }, walk: { id: walk.id, name: walk.name }, ...thing,
      putOff: putOff ? { until: putOff.until, reason: putOff.reason, by: putOff.by, at: putOff.at } : null,
    };
  };
  return [...rounds(known, ours, item), ...looks(known, ours, item), ...siteChecks(known, ours, item)];
}

/** The same batch wherever it was carried meanwhile; else the same place and season. */
const isOf = (one: Asked['putOffs'][number], about: Pick<Asked['putOffs'][number], 'kind' | 'placeId' | 'batchId' | 'seasonYear'>): boolean =>
  one.kind === about.kind && (one.batchId ? one.batchId === about.batchId : one.placeId === about.placeId && one.seasonYear === about.seasonYear);

type Ours = (id: string) => PlaceRow | undefined;
type ToItem = (due: Due, at: PlaceRow, thing: Omit<Thing, 'place'>) => DueItem;
const NOTHING_MORE = { batch: null, season: null, check: null };

function rounds({ standing }: Known, ours: Ours, item: ToItem): DueItem[] {
  const there = gathered(standing, (one) => ours(one.placeId)?.walkId);
  return [...there].flatMap(([id, sum]) => {
    const walk = ours(id);
    const days = walk?.everyDays ?? (walk?.siteId ? null : ROUND_EVERY_DAYS);
    if (!walk || days === null) return [];
    const basis: DaysBasis = walk.toldById === null ? 'default' : walk.toldById === id ? 'written' : 'above';
    return item(roundDue(sum.oldestLookOn, days), walk, { ...NOTHING_MORE, batches: sum.batches, plants: sum.plants, since: sum.oldestLookOn, wait: { days, basis, stickings: null } });
  });
}

function looks({ batches, days, asked }: Known, ours: Ours, item: ToItem): DueItem[] {
  const daysOf = new Map(days.map((one) => [one.taxonId, one]));
  return batches.flatMap((row) => {
    const at = ours(row.placeId);
    if (!at) return [];
    const batch = { id: row.id, label: row.label, donorTree: row.donorTree, taxon: row.taxon };
    const thing = { batch, season: null, check: null, batches: 1, plants: row.plants };
    if (row.stage === 'potted') {
      const wait = { days: asked.gradeEveryDays, basis: 'written' as const, stickings: null };
      return item(gradeCheckDue(row.lastSeenOn, asked.gradeEveryDays), at, { ...thing, since: row.lastSeenOn, wait });
    }
    const own = daysOf.get(row.taxonId ?? '') ?? USUAL;
    return cuttingsDue(nowOf(row), own).map((due) => {
      const { days: n, basis, stickings } = own[due.kind as 'firstCheck'];
      return item(due, at, { ...thing, since: row.since, wait: { days: n, basis, stickings: stickings ?? null } });
    });
  });
}

/** For mixed batches and others whose species nobody knows. */
const usual = (days: number) => ({ days, basis: 'default' as const });
const USUAL: Omit<TaxonDays, 'taxonId'> = { firstCheck: usual(DEFAULT_DAYS.firstCheck), verdict: usual(DEFAULT_DAYS.verdict), movingOn: usual(DEFAULT_DAYS.movingOn) };

const nowOf = ({ rootedNow, strongLookOn, calledOn, ...row }: BatchRow) =>
  ({ ...row, rootedNow: rootedNow ?? undefined, strongLookOn: strongLookOn ?? undefined, calledOn: calledOn ?? undefined });

function siteChecks({ planted, asked }: Known, ours: Ours, item: ToItem): DueItem[] {
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
