import { Injectable } from '@nestjs/common';
import type { TripNote } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { known } from '../database/known.ts';
import { PrismaDoor, type Records } from '../database/prisma-door.ts';
import { RecordTrail } from '../database/record-trail.ts';
import type { Caller } from '../http/caller.ts';
import { refuseIfStale } from '../http/etag.ts';
import { refuseWithoutTheGrant } from '../http/grant.ts';

@Injectable()
export class TripNoteService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly trail: RecordTrail,
  ) {}

  /** @throws DomainError `place/grant-needed`, `record/unknown` */
  async one(caller: Caller, tripId: string): Promise<TripNote> {
    refuseWithoutTheGrant(caller);
    return this.door.inTransaction(caller, async (records) => known(await this.#find(records, caller, tripId)));
  }

  /**
   * @param seen version of the note that was there before; not needed for the first
   * @throws DomainError `place/grant-needed`, `record/unknown`, `http/version-needed`, `http/version-stale`
   */
  async write(caller: Caller, tripId: string, { note }: TripNote, seen: string | undefined): Promise<TripNote> {
    refuseWithoutTheGrant(caller);
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      known(await records.trip.findUnique({ where: { programmeId_id: { programmeId, id: tripId } }, select: { id: true } }));
      const earlier = await this.#find(records, caller, tripId);
      if (earlier && seen === undefined) throw new DomainError('http/version-needed', 'there is a note already: send If-Match with its ETag');
      if (earlier) refuseIfStale(seen ?? '', earlier);
      await records.tripNote.upsert({
        where: { programmeId_tripId: { programmeId, tripId } },
        create: { programmeId, tripId, note },
        update: { note },
      });
      await this.trail.changed(records, caller, 'trip', tripId, {}, 'note-written');
      return { note };
    });
  }

  #find(records: Records, { programmeId }: Caller, tripId: string): Promise<TripNote | null> {
    return records.tripNote.findUnique({ where: { programmeId_tripId: { programmeId, tripId } }, select: { note: true } });
  }
}
