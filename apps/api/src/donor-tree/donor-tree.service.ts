import { Injectable } from '@nestjs/common';
import type { DonorTree, DonorTreeContent, DonorTreeQuery, NewDonorTree } from '@sprigline/contract';
import { asTheHouse } from '../database/context.ts';
import { PrismaDoor } from '../database/prisma-door.ts';
import { before, RecordTrail } from '../database/record-trail.ts';
import { WhoMaySeeQueries } from '../entry/who-may-see.queries.ts';
import { CellQueries } from '../exact-place/cell.queries.ts';
import { ExactPlaceQueries } from '../exact-place/exact-place.queries.ts';
import type { Caller } from '../http/caller.ts';
import { noteFor } from '../http/note-for.ts';
import { refuseIfStale } from '../http/etag.ts';
import type { Part } from '../http/part-of-list.ts';
import { DonorTreeQueries, toRow } from './donor-tree.queries.ts';

@Injectable()
export class DonorTreeService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly trail: RecordTrail,
    private readonly trees: DonorTreeQueries,
    private readonly places: ExactPlaceQueries,
    private readonly cells: CellQueries,
    private readonly whoMaySee: WhoMaySeeQueries,
  ) {}

  list(caller: Caller, query: DonorTreeQuery): Promise<Part<DonorTree>> {
    return this.door.inTransaction(caller, async (records) => {
      const { items, ...rest } = await this.trees.list(records, caller.programmeId, query);
      return { ...rest, items: items.map((tree) => shownTo(caller, tree)) };
    });
  }

  /** @throws DomainError `record/unknown` */
  one(caller: Caller, id: string): Promise<DonorTree> {
    return this.door.inTransaction(caller, async (records) => shownTo(caller, await this.trees.one(records, caller.programmeId, id)));
  }

  /**
   * Whoever stood at the tree may tell its place, also without the right to read it
   * back: the house files it, and answers the cell.
   *
   * @throws DomainError `record/name-taken`, `record/id-reused`, `record/no-such-stand`, `record/no-such-taxon`
   */
  make(caller: Caller, tree: NewDonorTree): Promise<DonorTree> {
    const { programmeId } = caller;
    const { id, place, ...content } = tree;
    return this.door.inTransaction(asTheHouse(caller), async (records) => {
      if (await this.trail.isNew(records, caller, 'donor-tree', tree)) {
        await records.donorTree.create({ data: { programmeId, id, ...toRow(content) } });
        if (place) await this.places.file(records, programmeId, { donorTreeId: id }, place);
        // Also without a place: its kind may ask to hide the stand more than before.
        await this.cells.cutAgain(records, programmeId, [tree.standId]);
      }
      return this.trees.one(records, programmeId, id);
    });
  }

  /** @throws DomainError `record/unknown`, `record/name-taken`, `record/no-such-stand`, `record/no-such-taxon`, `http/version-stale` */
  change(caller: Caller, id: string, content: DonorTreeContent, seen: string): Promise<DonorTree> {
    const { programmeId } = caller;
    return this.door.behindALock(asTheHouse(caller), async (records) => {
      await this.whoMaySee.hold(records, programmeId);
      const { cell, cloneGroupId, ...earlier } = await this.trees.one(records, programmeId, id);
      refuseIfStale(seen, { ...earlier, cloneGroupId, cell });
      await records.donorTree.update({ where: { programmeId_id: { programmeId, id } }, data: toRow(content) });
      await this.trail.changed(records, caller, 'donor-tree', id, before(earlier, { id, ...content }));
      if (earlier.standId !== content.standId) await this.whoMaySee.standsChanged(records, programmeId);
      if (earlier.standId !== content.standId || earlier.taxonId !== content.taxonId) {
        await this.cells.cutAgain(records, programmeId, [earlier.standId, content.standId]);
      }
      return this.trees.one(records, programmeId, id);
    });
  }
}

const shownTo = (caller: Caller, tree: DonorTree): DonorTree => ({ ...tree, note: noteFor(caller, tree.note) });
