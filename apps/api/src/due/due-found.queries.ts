import { Injectable } from '@nestjs/common';
import type { DueItem, DueKind, DuePlace, DuePlaces, TaxonDays } from '@sprigline/contract';
import { DEFAULT_DAYS } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { allDue } from './all-due.ts';
import { DueDaysQueries } from './due-days.queries.ts';
import { DuePlacesQueries, type PlaceRow } from './due-places.queries.ts';
import { DueQueries } from './due.queries.ts';

interface Found {
  readonly today: string;
  readonly until: string;
  /** What shows by that day: the nearest day first, then in walking order. */
  readonly items: DueItem[];
  /** Every place, with its rank in the walking order. */
  readonly placeOf: ReadonlyMap<string, PlaceRow & { readonly rank: number }>;
}

/** What is asked for; `until` left out is today. */
interface Asked {
  readonly kind?: DueKind | undefined;
  readonly placeId?: string | undefined;
  readonly until?: string | undefined;
}

/** All that is due, worked out inside somebody's unit of work: four reads, whatever the length. */
@Injectable()
export class DueFoundQueries {
  constructor(
    private readonly queries: DueQueries,
    private readonly places: DuePlacesQueries,
    private readonly days: DueDaysQueries,
  ) {}

  async find(sql: UnitOfWork, programmeId: string, { kind, placeId, until: asked }: Asked): Promise<Found> {
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

  /** Where to walk, the nearest day first. */
  async byPlace(sql: UnitOfWork, programmeId: string, { limit, ...asked }: Asked & { readonly limit: number }): Promise<DuePlaces> {
    const { items, placeOf, today, until } = await this.find(sql, programmeId, asked);
    const walks = byWalk(items);
    const all = [...walks].flatMap(([id, there]) => placeDue(placeOf.get(id), there));
    return { today, until, items: items.length, places: all.slice(0, limit), more: Math.max(0, all.length - limit) };
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
