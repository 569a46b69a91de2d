import { Injectable } from '@nestjs/common';
import type { BundleContent, BundlePath, LastCut, LastCutQuery, NewBundle, NewTrip, Trip, TripContent, TripInList, TripQuery } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { asTheHouse } from '../database/context.ts';
import { asDate } from '../database/day.ts';
import { known } from '../database/known.ts';
import { PrismaDoor, type Records } from '../database/prisma-door.ts';
import { before, RecordTrail } from '../database/record-trail.ts';
import type { Caller } from '../http/caller.ts';
import { refuseIfStale } from '../http/etag.ts';
import type { Part } from '../http/part-of-list.ts';
import { PermissionQueries } from '../permission/permission.queries.ts';
import { TripQueries } from './trip.queries.ts';
import { TripWarningQueries } from './trip-warning.queries.ts';

@Injectable()
export class TripService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly trail: RecordTrail,
    private readonly trips: TripQueries,
    private readonly permissions: PermissionQueries,
    private readonly warnings: TripWarningQueries,
  ) {}

  list(caller: Caller, query: TripQuery): Promise<Part<TripInList>> {
    return this.door.inTransaction(caller, (records) => this.trips.list(records, caller.programmeId, query));
  }

  lastCuts(caller: Caller, query: LastCutQuery): Promise<LastCut[]> {
    return this.door.inTransaction(caller, (records) => this.warnings.lastCuts(records, caller.programmeId, query));
  }

  /** @throws DomainError `record/unknown` */
  one(caller: Caller, id: string): Promise<Trip> {
    return this.#inTheHouse(caller, (records) => this.trips.one(records, caller, id));
  }

  /**
   * The trip, its note and its bundles at once. Whoever went may write the note,
   * also without the right to read it back.
   *
   * @throws DomainError `record/id-reused`, `record/no-such-stand`, `record/no-such-donor-tree`, `record/no-such-permission`, `record/no-such-person`
   */
  make(caller: Caller, trip: NewTrip): Promise<Trip> {
    const { programmeId } = caller;
    const { id, note, bundles, wentOn, standId, ...rest } = trip;
    return this.#inTheHouse(caller, async (records) => {
      if (await this.trail.isNew(records, caller, 'trip', trip)) {
        const permissionId = rest.permissionId === undefined ? await this.permissions.covering(records, programmeId, standId, wentOn) : rest.permissionId;
        await records.trip.create({ data: { programmeId, id, standId, ...rest, wentOn: asDate(wentOn), permissionId } });
        if (note !== null) await records.tripNote.create({ data: { programmeId, tripId: id, note } });
        await records.bundle.createMany({ data: bundles.map((bundle) => ({ programmeId, tripId: id, ...bundle })) });
      }
      return this.trips.one(records, caller, id);
    });
  }

  /** @throws DomainError `record/unknown`, `record/no-such-stand`, `record/no-such-permission`, `record/no-such-person`, `http/version-stale` */
  change(caller: Caller, id: string, content: TripContent, seen: string): Promise<Trip> {
    const { programmeId } = caller;
    return this.#inTheHouse(caller, async (records) => {
      const earlier = await this.trips.one(records, caller, id);
      refuseIfStale(seen, earlier);
      await records.trip.update({ where: { programmeId_id: { programmeId, id } }, data: { ...content, wentOn: asDate(content.wentOn) } });
      await this.trail.changed(records, caller, 'trip', id, before(earlier, { ...earlier, ...content }));
      return this.trips.one(records, caller, id);
    });
  }

  /** @throws DomainError `record/unknown`, `record/id-reused`, `record/no-such-donor-tree` */
  addBundle(caller: Caller, tripId: string, bundle: NewBundle): Promise<Trip> {
    const { programmeId } = caller;
    return this.#inTheHouse(caller, async (records) => {
      known(await records.trip.findUnique({ where: { programmeId_id: { programmeId, id: tripId } }, select: { id: true } }));
      if (await this.trail.isNew(records, caller, 'bundle', bundle)) {
        await records.bundle.create({ data: { programmeId, tripId, ...bundle } });
      }
      return this.trips.one(records, caller, tripId);
    });
  }

  /**
   * @param seen version of the trip, which holds its bundles
   * @throws DomainError `record/unknown`, `trip/bundle-is-stuck` for another donor tree, `record/no-such-donor-tree`, `http/version-stale`
   */
  changeBundle(caller: Caller, { id: tripId, bundleId }: BundlePath, content: BundleContent, seen: string): Promise<Trip> {
    const { programmeId } = caller;
    return this.#inTheHouse(caller, async (records) => {
      const trip = await this.trips.one(records, caller, tripId);
      const { id, ...earlier } = known(trip.bundles.find((bundle) => bundle.id === bundleId));
      refuseIfStale(seen, trip);
      if (earlier.donorTreeId !== content.donorTreeId) await this.#refuseIfStuck(records, programmeId, id);
      await records.bundle.update({ where: { programmeId_id: { programmeId, id } }, data: content });
      await this.trail.changed(records, caller, 'bundle', id, before(earlier, content));
      return this.trips.one(records, caller, tripId);
    });
  }

  async #refuseIfStuck(records: Records, programmeId: string, bundleId: string): Promise<void> {
    const stickings = await records.sticking.count({ where: { programmeId, bundleId } });
    if (stickings === 0) return;
    throw new DomainError('trip/bundle-is-stuck', 'correct the donor tree of its stickings instead', { stickings });
  }

  /** It files notes blind and weighs permissions: what it reads of them is not answered without the grant. */
  #inTheHouse<T>(caller: Caller, work: (records: Records) => Promise<T>): Promise<T> {
    return this.door.inTransaction(asTheHouse(caller), work);
  }
}
