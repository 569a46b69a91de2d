import { Injectable } from '@nestjs/common';
import { type DueItem, DueKind, type DuePlaces, type TaxonDays } from '@sprigline/contract';
import { DEFAULT_DAYS } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { allDue, type Waiting } from './all-due.ts';
import { DueDaysQueries } from './due-days.queries.ts';
import { DuePlacesQueries, type PlaceRow } from './due-places.queries.ts';
import { DueQueries, type LivingAsked } from './due.queries.ts';
import { heapsOf, placesDue } from './places-due.ts';

/** What is asked for; `until` left out is today. */
interface Asked {
  readonly kind?: DueKind | undefined;
  readonly placeId?: string | undefined;
  readonly until?: string | undefined;
  readonly batchId?: string | undefined;
}

/** Day, rank in walking order and key: what a list of things that are due is sorted by. */
export type SortKeys = readonly [day: string, rank: string, key: string];

type Ranked = Pick<Waiting, 'day' | 'rank' | 'key'>;

/** What is due, worked out inside somebody's unit of work: at most four reads, whatever the length. */
@Injectable()
export class DueFoundQueries {
  constructor(
    private readonly queries: DueQueries,
    private readonly places: DuePlacesQueries,
    private readonly days: DueDaysQueries,
  ) {}

  /** So many of what shows by a day, the nearest day first, then in walking order. */
  async list(sql: UnitOfWork, programmeId: string, { after, limit, ...asked }: Asked & { readonly after?: SortKeys | undefined; readonly limit: number }): Promise<(DueItem & Ranked)[]> {
    const { waiting } = await this.#find(sql, programmeId, asked, { named: limit, after });
    const isAfter = (one: Waiting) => after === undefined || sortKeysOf(one).join(' ') > after.join(' ');
    const items = waiting.filter(isAfter).sort(inOrder).slice(0, limit);
    const names = await this.queries.names(sql, programmeId, items.flatMap(({ batch }) => batch?.id ?? []));
    return items.map((one) => ({ ...one, batch: one.batch && { label: null, donorTree: null, taxon: null, ...names.get(one.batch.id), id: one.batch.id } }));
  }

  /** The one thing of that kind at that place, or of that batch, whenever it is due. */
  async one(sql: UnitOfWork, programmeId: string, { kind, placeId, batchId, seasonYear }: { kind: DueKind; placeId?: string | undefined; batchId?: string | undefined; seasonYear?: number | undefined }): Promise<{ today: string; item: Waiting | undefined }> {
    const { waiting, today } = await this.#find(sql, programmeId, { kind, batchId, until: FAR_OFF }, { named: 1 });
    return { today, item: waiting.find((one) => (batchId === undefined ? one.place.id === placeId : one.batch?.id === batchId) && one.season?.year === seasonYear) };
  }

  /** Where to walk, the nearest day first. */
  async byPlace(sql: UnitOfWork, programmeId: string, { limit, ...asked }: Asked & { readonly limit: number }): Promise<DuePlaces> {
    const { waiting, pottedThere, gradeEveryDays, placeOf, today, until } = await this.#find(sql, programmeId, asked, {});
    const heaps = heapsOf(waiting, pottedThere, gradeEveryDays, placeOf);
    const all = placesDue(heaps, placeOf);
    return { today, until, items: heaps.reduce((sum, { n }) => sum + n, 0), places: all.slice(0, limit), more: Math.max(0, all.length - limit) };
  }

  async #find(sql: UnitOfWork, programmeId: string, { kind, placeId, batchId, until: asked }: Asked, part: Pick<LivingAsked, 'named' | 'after'>) {
    const programme = await this.places.asked(sql, programmeId);
    const days = await this.days.ofTaxa(sql, programmeId);
    const { today, places, putOffs, gradeEveryDays } = programme;
    const until = asked ?? today;
    const placeOf = new Map(places.map((row, rank) => [row.id, { ...row, rank }]));
    const counts = (place: PlaceRow) => !place.isTheirs && (placeId === undefined || place.ids.includes(placeId));
    const living = await this.queries.living(sql, programmeId, {
      ...programme, ...part, until, batchId, kinds: kind ? [kind] : DueKind.options, waits: new Map(days.map((one) => [one.taxonId, shortest(one)])), shortest: SHORTEST,
      ranks: new Map([...placeOf.values()].filter(counts).map(({ id, rank }) => [id, rank])),
      putOff: putOffs.flatMap((one) => (one.kind === 'gradeCheck' && one.batchId !== null ? [one.batchId] : [])),
    });
    const waiting = allDue({ asked: programme, placeOf, days, ...living })
      .filter((one) => one.day <= until && (kind === undefined || one.kind === kind) && (placeId === undefined || placeOf.get(one.place.id)?.ids.includes(placeId)));
    return { ...living, waiting, gradeEveryDays, placeOf, today, until };
  }
}

/** A day by which everything shows. */
const FAR_OFF = '2999-12-31';

const SHORTEST = Math.min(...Object.values(DEFAULT_DAYS));
const shortest = ({ firstCheck, verdict, movingOn }: TaxonDays): number => Math.min(firstCheck.days, verdict.days, movingOn.days);

export const sortKeysOf = ({ day, rank, key }: Ranked): SortKeys => [day, String(rank).padStart(7, '0'), key];
const inOrder = (a: Waiting, b: Waiting): number => compare(a.day, b.day) || a.rank - b.rank || compare(a.key, b.key);
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
