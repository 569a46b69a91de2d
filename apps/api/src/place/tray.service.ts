import { Injectable } from '@nestjs/common';
import type { NewFilling, NewPlaceMove, Place } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { asDate } from '../database/day.ts';
import { PrismaDoor, type Records } from '../database/prisma-door.ts';
import { RecordTrail } from '../database/record-trail.ts';
import { WhoMaySeeQueries } from '../entry/who-may-see.queries.ts';
import type { Caller } from '../http/caller.ts';
import { PlaceQueries } from './place.queries.ts';
import { PlaceRecordQueries } from './place-record.queries.ts';

/** A tray is a thing: it is filled anew, and carried elsewhere with all it holds. */
@Injectable()
export class TrayService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly trail: RecordTrail,
    private readonly places: PlaceRecordQueries,
    private readonly queries: PlaceQueries,
    private readonly whoMaySee: WhoMaySeeQueries,
  ) {}

  /**
   * Plants that stood in it on that day are lost sight of, if nobody says what became of
   * them: they have to be moved, lifted or thrown out by then, or said to have stayed.
   *
   * @throws DomainError `record/unknown`, `record/id-reused`, `place/not-a-tray`, `place/plants-stand-there`
   */
  fill(caller: Caller, placeId: string, filling: NewFilling): Promise<Place> {
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      const { kind } = await this.places.one(records, programmeId, placeId);
      if (kind !== 'tray') throw new DomainError('place/not-a-tray', `a ${kind} is not filled: choose a tray`);
      if (await this.trail.isNew(records, caller, 'filling', filling)) {
        if (!filling.plantsStayed) await this.#refuseOverPlants(records, programmeId, placeId, filling.filledOn);
        await records.trayFilling.create({ data: { programmeId, placeId, ...filling, filledOn: asDate(filling.filledOn) } });
      }
      return this.places.one(records, programmeId, placeId);
    });
  }

  /**
   * Any place but a site or a plot may be carried. Where it lay before is kept with
   * the day, so that what a batch was exposed to can be read afterwards.
   *
   * @throws DomainError `record/unknown`, `record/id-reused`, `record/name-taken`, `record/no-such-place`, `place/holds-no-places`, `place/inside-itself`
   */
  move(caller: Caller, placeId: string, move: NewPlaceMove): Promise<Place> {
    const { programmeId, personId } = caller;
    const { id, toPlaceId, movedOn } = move;
    return this.door.behindALock(caller, async (records) => {
      await this.whoMaySee.hold(records, programmeId);
      const { kind, parentId } = await this.places.one(records, programmeId, placeId);
      if (kind === 'site' || kind === 'plot') throw new DomainError('place/holds-no-places', `a ${kind} stays where it is`);
      if (await this.trail.isNew(records, caller, 'place-move', move)) {
        await this.places.refuseToPutInto(records, programmeId, toPlaceId);
        if (toPlaceId) await this.#refuseARing(records, programmeId, placeId, toPlaceId);
        const told = { programmeId, id, placeId, movedBy: personId, movedOn: asDate(movedOn) };
        const later = await records.placeMove.findFirst({ where: { programmeId, placeId, movedOn: { gt: asDate(movedOn) } }, select: { id: true } });
        await records.placeMove.create({ data: { ...told, fromParentId: parentId, toParentId: toPlaceId } });
        // One that is told late takes its place in the past; where it lies now is told by the last one.
        if (!later) {
          await records.place.update({ where: { programmeId_id: { programmeId, id: placeId } }, data: { parentId: toPlaceId } });
          await this.whoMaySee.placeChanged(records, programmeId, placeId);
        }
      }
      return this.places.one(records, programmeId, placeId);
    });
  }

  async #refuseOverPlants(records: Records, programmeId: string, placeId: string, day: string): Promise<void> {
    const batches = await this.queries.batchesStandingOn(records, programmeId, placeId, day);
    if (batches > 0) throw new DomainError('place/plants-stand-there', `${batches} batches stood in it on ${day}: move them, or say that they stayed`, { batches });
  }

  async #refuseARing(records: Records, programmeId: string, placeId: string, toPlaceId: string): Promise<void> {
    await this.queries.holdAbove(records, programmeId, toPlaceId);
    if (await this.queries.liesIn(records, programmeId, toPlaceId, placeId)) {
      throw new DomainError('place/inside-itself', 'that place lies in the one to be moved');
    }
  }
}
