import { Injectable } from '@nestjs/common';
import type { ExactPlace } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { known } from '../database/known.ts';
import { PrismaDoor, type Records } from '../database/prisma-door.ts';
import { RecordTrail } from '../database/record-trail.ts';
import type { Caller } from '../http/caller.ts';
import { refuseIfStale } from '../http/etag.ts';
import { refuseWithoutTheGrant } from '../http/grant.ts';
import { CellQueries } from './cell.queries.ts';
import { ExactPlaceQueries, type PlaceOf } from './exact-place.queries.ts';

@Injectable()
export class ExactPlaceService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly trail: RecordTrail,
    private readonly places: ExactPlaceQueries,
    private readonly cells: CellQueries,
  ) {}

  /** @throws DomainError `place/grant-needed`, `record/unknown` when no place is told */
  async one(caller: Caller, of: PlaceOf): Promise<ExactPlace> {
    refuseWithoutTheGrant(caller);
    return this.door.inTransaction(caller, async (records) => known(await this.places.find(records, caller.programmeId, of)));
  }

  /**
   * Tells or corrects a place, and cuts the cells anew.
   *
   * @param seen version of the place that was told before; not needed for the first telling
   * @throws DomainError `place/grant-needed`, `record/unknown`, `http/version-needed`, `http/version-stale`
   */
  async tell(caller: Caller, of: PlaceOf, place: ExactPlace, seen: string | undefined): Promise<ExactPlace> {
    refuseWithoutTheGrant(caller);
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      const standId = await this.#standOf(records, programmeId, of);
      const earlier = await this.places.find(records, programmeId, of);
      if (earlier) {
        if (seen === undefined) throw new DomainError('http/version-needed', 'a place is told already: send If-Match with its ETag');
        refuseIfStale(seen, earlier);
        await this.places.rewrite(records, programmeId, of, place);
      } else {
        await this.places.file(records, programmeId, of, place);
      }
      await this.cells.cutAgain(records, programmeId, [standId]);
      await this.#note(records, caller, of);
      return known(await this.places.find(records, programmeId, of));
    });
  }

  async #standOf(records: Records, programmeId: string, of: PlaceOf): Promise<string> {
    if ('standId' in of) {
      const stand = await records.stand.findUnique({ where: { programmeId_id: { programmeId, id: of.standId } }, select: { id: true } });
      return known(stand).id;
    }
    const tree = await records.donorTree.findUnique({ where: { programmeId_id: { programmeId, id: of.donorTreeId } }, select: { standId: true } });
    return known(tree).standId;
  }

  async #note(records: Records, caller: Caller, of: PlaceOf): Promise<void> {
    const [kind, id] = 'standId' in of ? (['stand', of.standId] as const) : (['donor-tree', of.donorTreeId] as const);
    await this.trail.changed(records, caller, kind, id, {}, 'placed');
  }
}
