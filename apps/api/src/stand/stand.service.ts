import { Injectable } from '@nestjs/common';
import type { NewStand, Stand, StandContent } from '@sprigline/contract';
import { asTheHouse } from '../database/context.ts';
import { known } from '../database/known.ts';
import { PrismaDoor, type Records } from '../database/prisma-door.ts';
import { before, RecordTrail } from '../database/record-trail.ts';
import { CellQueries, cellOf } from '../exact-place/cell.queries.ts';
import { ExactPlaceQueries } from '../exact-place/exact-place.queries.ts';
import type { Caller } from '../http/caller.ts';
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
  ) {}

  list(caller: Caller): Promise<Stand[]> {
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      const rows = await records.stand.findMany({ where: { programmeId }, select: SHOWN, orderBy: { name: 'asc' } });
      return rows.map(toStand);
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
    return this.door.inTransaction(asTheHouse(caller), async (records) => {
      const { cell, ...earlier } = await this.#one(records, caller, id);
      refuseIfStale(seen, { ...earlier, cell });
      await records.stand.update({ where: { programmeId_id: { programmeId, id } }, data: content });
      await this.trail.changed(records, caller, 'stand', id, before(earlier, { id, ...content }));
      if (earlier.sensitivity !== content.sensitivity) await this.cells.cutAgain(records, programmeId, [id]);
      return this.#one(records, caller, id);
    });
  }

  async #one(records: Records, { programmeId }: Caller, id: string): Promise<Stand> {
    return toStand(known(await records.stand.findUnique({ where: { programmeId_id: { programmeId, id } }, select: SHOWN })));
  }
}

type Row = Omit<Stand, 'cell'> & Parameters<typeof cellOf>[0];

function toStand({ cellLatitude, cellLongitude, cellDegrees, ...stand }: Row): Stand {
  return { ...stand, cell: cellOf({ cellLatitude, cellLongitude, cellDegrees }) };
}
