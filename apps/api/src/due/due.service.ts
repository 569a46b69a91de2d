import { Injectable } from '@nestjs/common';
import type { DueItem, DueKind, DuePlace, DuePlaces, DuePlacesQuery, DueQuery, NewPutOff, TaxonDays } from '@sprigline/contract';
import { dayAfter, DEFAULT_DAYS, DomainError } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';
import { allDue } from './all-due.ts';
import { DueDaysQueries } from './due-days.queries.ts';
import { DuePlacesQueries, type PlaceRow } from './due-places.queries.ts';
import { DueQueries } from './due.queries.ts';
import { PutOffQueries } from './put-off.queries.ts';

interface Found {
  readonly today: string;
  readonly until: string;
  /** What shows by that day: the nearest day first, then in walking order. */
  readonly items: DueItem[];
  /** Every place, with its rank in the walking order. */
  readonly placeOf: ReadonlyMap<string, PlaceRow & { readonly rank: number }>;
}

/** Longer is never: a thing put off over and over is looked at once a year at least. */
const LONGEST_PUT_OFF_DAYS = 366;

/** A day by which everything shows. */
const FAR_OFF = '2999-12-31';

@Injectable()
export class DueService {
  constructor(
    private readonly database: Database,
    private readonly queries: DueQueries,
    private readonly places: DuePlacesQueries,
    private readonly days: DueDaysQueries,
    private readonly putOffs: PutOffQueries,
  ) {}

  list(caller: Caller, { after, limit, ...asked }: DueQuery): Promise<Part<DueItem>> {
    const [day, rank, key] = keysAfter(after, 3) ?? [];
    return this.database.inTransaction(caller, async (sql) => {
      const { items, placeOf } = await this.#find(sql, caller.programmeId, asked);
      const rankOf = (item: DueItem) => String(placeOf.get(item.place.id)?.rank ?? 0).padStart(7, '0');
      const keysOf = (item: DueItem) => [item.day, rankOf(item), item.key];
      const isAfter = (item: DueItem) => day === undefined || keysOf(item).join(' ') > [day, rank, key].join(' ');
      return partOf(items.filter(isAfter).slice(0, limit + 1), limit, keysOf);
    });
  }

  /** Where to walk, the nearest day first. */
  byPlace(caller: Caller, { limit, ...asked }: DuePlacesQuery): Promise<DuePlaces> {
    return this.database.inTransaction(caller, async (sql) => {
      const { items, placeOf, today, until } = await this.#find(sql, caller.programmeId, asked);
      const walks = byWalk(items);
      const all = [...walks].flatMap(([id, there]) => placeDue(placeOf.get(id), there));
      return { today, until, items: items.length, places: all.slice(0, limit), more: Math.max(0, all.length - limit) };
    });
  }

  /** When cuttings of each species are looked at, moved on and called, and why then. */
  daysOfTaxa(caller: Caller): Promise<TaxonDays[]> {
    return this.database.inTransaction(caller, (sql) => this.days.ofTaxa(sql, caller.programmeId));
  }

  /**
   * Puts one thing off. Sending it twice does it once.
   *
   * @throws DomainError `due/until-out-of-reach`, `due/id-reused`
   * @throws DomainError `due/not-due-then` when it is not due on that day, or not any more
   */
  async putOff(caller: Caller, asked: NewPutOff): Promise<void> {
    await this.database.inTransaction(caller, async (sql) => {
      if (await this.putOffs.isThere(sql, caller, asked)) return;
      const { items, today } = await this.#find(sql, caller.programmeId, { until: FAR_OFF, kind: asked.kind });
      if (asked.until < today || asked.until > dayAfter(today, LONGEST_PUT_OFF_DAYS)) {
        throw new DomainError('due/until-out-of-reach', `choose a day from ${today} to ${dayAfter(today, LONGEST_PUT_OFF_DAYS)}`);
      }
      const item = items.find((one) => (one.batch?.id ?? one.place.id) === (asked.batchId ?? asked.placeId) && one.season?.year === asked.seasonYear);
      if (item?.dueOn !== asked.dueOn) {
        throw new DomainError('due/not-due-then', item ? `it is due on ${item.dueOn}: look at the list again` : 'nobody waits for that any more: look at the list again');
      }
      await this.putOffs.write(sql, caller, asked, item.place.id);
    });
  }

  async #find(sql: UnitOfWork, programmeId: string, { kind, placeId, until: asked }: { kind?: DueKind | undefined; placeId?: string | undefined; until?: string | undefined }): Promise<Found> {
    const programme = await this.places.asked(sql, programmeId);
    const rows = await this.places.places(sql, programmeId);
    const days = await this.days.ofTaxa(sql, programmeId);
    const until = asked ?? programme.today;
    const waits = new Map(days.map((one) => [one.taxonId, shortest(one)]));
    const living = await this.queries.living(sql, programmeId, { ...programme, until, waits, shortest: Math.min(...Object.values(DEFAULT_DAYS)) });

    const placeOf = new Map(rows.map((row, rank) => [row.id, { ...row, rank }]));
    const rankOf = ({ place }: DueItem) => placeOf.get(place.id)?.rank ?? 0;
    const items = allDue({ asked: programme, places: rows, days, ...living })
      .filter((item) => item.day <= until && (kind === undefined || item.kind === kind) && (placeId === undefined || placeOf.get(item.place.id)?.ids.includes(placeId)))
      .sort((a, b) => (a.day === b.day ? rankOf(a) - rankOf(b) || compare(a.key, b.key) : compare(a.day, b.day)));
    return { today: programme.today, until, items, placeOf };
  }
}

const shortest = ({ firstCheck, verdict, movingOn }: TaxonDays): number => Math.min(firstCheck.days, verdict.days, movingOn.days);
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The items come sorted, so the first of a place, and of a kind, has the nearest day. */
function placeDue(walk: PlaceRow | undefined, items: readonly DueItem[]): DuePlace[] {
  const [first] = items;
  if (!walk || !first) return [];
  const kinds = [...new Set(items.map(({ kind }) => kind))].map((kind) => {
    const of = items.filter((item) => item.kind === kind);
    return { kind, n: of.length, day: of[0]?.day ?? first.day };
  });
  return [{ walk: { id: walk.id, name: walk.name, kind: walk.kind }, path: walk.path, day: first.day, items: items.length, kinds }];
}

/** Node 20 has no Map.groupBy. */
function byWalk(items: readonly DueItem[]): Map<string, DueItem[]> {
  const walks = new Map<string, DueItem[]>();
  for (const item of items) {
    const there = walks.get(item.walk.id);
    if (there) there.push(item);
    else walks.set(item.walk.id, [item]);
  }
  return walks;
}
