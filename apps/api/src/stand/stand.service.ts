import { Injectable } from '@nestjs/common';
import type { NewStand, Stand, StandContent } from '@sprigline/contract';
import { asTheHouse } from '../database/context.ts';
import { known } from '../database/known.ts';
import { PrismaDoor, type Records } from '../database/prisma-door.ts';
import { before, RecordTrail } from '../database/record-trail.ts';
import { WhoMaySeeQueries } from '../entry/who-may-see.queries.ts';
import { CellQueries, cellOf } from '../exact-place/cell.queries.ts';
import { ExactPlaceQueries } from '../exact-place/exact-place.queries.ts';
import type { Caller } from '../http/caller.ts';
import { noteFor } from '../http/note-for.ts';
import { refuseIfStale } from '../http/etag.ts';

const CONTENT = { name: true, partnerId: true, sensitivity: true, note: true } as const;
const SHOWN = { id: true, ...CONTENT, cellLatitude: true, cellLongitude: true, cellDegrees: true } as const;

@Injectable()
export class StandService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly trail: RecordTrail,
    private readonly places: ExactPlaceQueries,
    private readonly cells: CellQueries,
    private readonly whoMaySee: WhoMaySeeQueries,
  ) {}

  list(caller: Caller): Promise<Stand[]> {
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      const rows = await records.stand.findMany({ where: { programmeId }, select: SHOWN, orderBy: { name: 'asc' } });
      return rows.map((row) => toStand(row, caller));
    });
  }

  /** @throws DomainError `record/unknown` */
  one(caller: Caller, id: string): Promise<Stand> {
    return this.door.inTransaction(caller, (records) => this.#one(records, caller, id));
  }

  /** @throws DomainError `record/name-taken`, `record/id-reused`, `record/no-such-partner` */
  make(caller: Caller, stand: NewStand): Promise<Stand> {
    const { programmeId } = caller;
    const { id, place, ...content } = stand;
    return this.door.inTransaction(asTheHouse(caller), async (records) => {
      if (await this.trail.isNew(records, caller, 'stand', stand)) {
        await records.stand.create({ data: { programmeId, id, ...content } });
        if (place) {
          await this.places.file(records, programmeId, { standId: id }, place);
          await this.cells.cutAgain(records, programmeId, [id]);
        }
      }
      return this.#one(records, caller, id);
    });
  }

  /** @throws DomainError `record/unknown`, `record/name-taken`, `record/no-such-partner`, `http/version-stale` */
  change(caller: Caller, id: string, content: StandContent, seen: string): Promise<Stand> {
    const { programmeId } = caller;
    return this.door.behindALock(asTheHouse(caller), async (records) => {
      await this.whoMaySee.hold(records, programmeId);
      const { cell, ...earlier } = await this.#one(records, caller, id);
      refuseIfStale(seen, { ...earlier, cell });
      await records.stand.update({ where: { programmeId_id: { programmeId, id } }, data: content });
      await this.trail.changed(records, caller, 'stand', id, before(earlier, { id, ...content }));
      if (earlier.partnerId !== content.partnerId) await this.whoMaySee.standsChanged(records, programmeId);
      if (earlier.sensitivity !== content.sensitivity) await this.cells.cutAgain(records, programmeId, [id]);
      return this.#one(records, caller, id);
    });
  }

  async #one(records: Records, caller: Caller, id: string): Promise<Stand> {
    const { programmeId } = caller;
    return toStand(known(await records.stand.findUnique({ where: { programmeId_id: { programmeId, id } }, select: SHOWN })), caller);
  }
}

type Row = Omit<Stand, 'cell'> & Parameters<typeof cellOf>[0];

function toStand({ cellLatitude, cellLongitude, cellDegrees, ...stand }: Row, caller: Caller): Stand {
  return { ...stand, note: noteFor(caller, stand.note), cell: cellOf({ cellLatitude, cellLongitude, cellDegrees }) };
}
