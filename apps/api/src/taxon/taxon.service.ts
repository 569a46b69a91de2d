import { Injectable } from '@nestjs/common';
import type { NewTaxon, Taxon, TaxonContent } from '@sprigline/contract';
import { asTheHouse } from '../database/context.ts';
import { known } from '../database/known.ts';
import { PrismaDoor, type Records } from '../database/prisma-door.ts';
import { before, RecordTrail } from '../database/record-trail.ts';
import type { Caller } from '../http/caller.ts';
import { refuseIfStale } from '../http/etag.ts';
import { CellQueries } from '../exact-place/cell.queries.ts';

const SHOWN = {
  id: true, scientificName: true, commonName: true, sensitivity: true, firstCheckDays: true, verdictDays: true, movingOnDays: true,
} as const;

@Injectable()
export class TaxonService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly trail: RecordTrail,
    private readonly cells: CellQueries,
  ) {}

  list(caller: Caller): Promise<Taxon[]> {
    const { programmeId } = caller;
    return this.door.inTransaction(caller, (records) =>
      records.taxon.findMany({ where: { programmeId }, select: SHOWN, orderBy: { scientificName: 'asc' } }),
    );
  }

  /** @throws DomainError `record/unknown` */
  one(caller: Caller, id: string): Promise<Taxon> {
    return this.door.inTransaction(caller, (records) => this.#one(records, caller, id));
  }

  /** @throws DomainError `record/name-taken`, `record/id-reused` */
  make(caller: Caller, taxon: NewTaxon): Promise<Taxon> {
    return this.door.inTransaction(caller, async (records) => {
      if (await this.trail.isNew(records, caller, 'taxon', taxon)) {
        await records.taxon.create({ data: { programmeId: caller.programmeId, ...taxon } });
      }
      return this.#one(records, caller, taxon.id);
    });
  }

  /** @throws DomainError `record/unknown`, `record/name-taken`, `http/version-stale` */
  change(caller: Caller, id: string, content: TaxonContent, seen: string): Promise<Taxon> {
    const { programmeId } = caller;
    // The house cuts cells: nothing of the exact places that it reads is answered.
    return this.door.inTransaction(asTheHouse(caller), async (records) => {
      const earlier = await this.#one(records, caller, id);
      refuseIfStale(seen, earlier);
      await records.taxon.update({ where: { programmeId_id: { programmeId, id } }, data: content });
      await this.trail.changed(records, caller, 'taxon', id, before(earlier, { id, ...content }));
      if (earlier.sensitivity !== content.sensitivity) {
        await this.cells.cutAgain(records, programmeId, await this.cells.standsWith(records, programmeId, id));
      }
      return this.#one(records, caller, id);
    });
  }

  async #one(records: Records, { programmeId }: Caller, id: string): Promise<Taxon> {
    return known(await records.taxon.findUnique({ where: { programmeId_id: { programmeId, id } }, select: SHOWN }));
  }
}
