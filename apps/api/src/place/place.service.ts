import { Injectable } from '@nestjs/common';
import { type NewPlace, Place, type PlaceContent } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { asDate, asDateOrNull } from '../database/day.ts';
import { PrismaDoor, type Records } from '../database/prisma-door.ts';
import { before, RecordTrail } from '../database/record-trail.ts';
import { WhoMaySeeQueries } from '../entry/who-may-see.queries.ts';
import type { Caller } from '../http/caller.ts';
import { refuseIfStale } from '../http/etag.ts';
import { PlaceQueries } from './place.queries.ts';
import { PlaceRecordQueries } from './place-record.queries.ts';

@Injectable()
export class PlaceService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly trail: RecordTrail,
    private readonly places: PlaceRecordQueries,
    private readonly queries: PlaceQueries,
    private readonly whoMaySee: WhoMaySeeQueries,
  ) {}

  /** @throws DomainError `record/unknown` */
  one(caller: Caller, id: string): Promise<Place> {
    return this.door.inTransaction(caller, (records) => this.places.one(records, caller.programmeId, id));
  }

  /** @throws DomainError `record/name-taken`, `record/id-reused`, `record/no-such-place`, `record/no-such-partner`, `place/holds-no-places`, `place/not-a-tray` */
  make(caller: Caller, place: NewPlace): Promise<Place> {
    const { programmeId } = caller;
    const { filling, ...content } = place;
    if (place.kind !== 'tray' && (filling !== null || place.rows !== null)) {
      throw new DomainError('place/not-a-tray', 'only a tray has rows and is filled');
    }
    return this.door.inTransaction(caller, async (records) => {
      if (await this.trail.isNew(records, caller, 'place', place)) {
        await this.places.refuseToPutInto(records, programmeId, place.parentId);
        await records.place.create({ data: { programmeId, ...content } });
        if (filling) {
          const { filledOn, ...rest } = filling;
          await records.trayFilling.create({ data: { programmeId, placeId: place.id, ...rest, filledOn: asDate(filledOn) } });
        }
      }
      return this.places.one(records, programmeId, place.id);
    });
  }

  /** @throws DomainError `record/unknown`, `record/name-taken`, `record/no-such-partner`, `place/not-empty`, `place/not-a-tray`, `http/version-stale` */
  change(caller: Caller, id: string, content: PlaceContent, seen: string): Promise<Place> {
    const { programmeId } = caller;
    return this.door.behindALock(caller, async (records) => {
      await this.whoMaySee.hold(records, programmeId);
      const earlier = await this.places.one(records, programmeId, id);
      refuseIfStale(seen, earlier);
      if (content.rows !== null && earlier.kind !== 'tray') throw new DomainError('place/not-a-tray', 'only a tray has rows');
      if (content.closedOn !== null && earlier.closedOn === null) await this.#refuseWhilePlantsAreThere(records, programmeId, id);
      await records.place.update({ where: { programmeId_id: { programmeId, id } }, data: { ...content, closedOn: asDateOrNull(content.closedOn) } });
      if (earlier.partnerId !== content.partnerId) await this.whoMaySee.placeChanged(records, programmeId, id);
      await this.trail.changed(records, caller, 'place', id, before(earlier, { ...earlier, ...content }));
      return this.places.one(records, programmeId, id);
    });
  }

  async #refuseWhilePlantsAreThere(records: Records, programmeId: string, id: string): Promise<void> {
    const plants = await this.queries.plantsWithin(records, programmeId, id);
    if (plants > 0) throw new DomainError('place/not-empty', `${plants} plants stand there: move them, then close it`, { plants });
  }
}
