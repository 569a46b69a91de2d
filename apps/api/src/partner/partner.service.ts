import { Injectable } from '@nestjs/common';
import type { NewPartner, Partner, PartnerContent } from '@sprigline/contract';
import { asDate, asDateOrNull, dayOf, dayOrNull } from '../database/day.ts';
import type { Prisma } from '../database/generated/client.ts';
import { known } from '../database/known.ts';
import { PrismaDoor, type Records } from '../database/prisma-door.ts';
import { before, RecordTrail } from '../database/record-trail.ts';
import type { Caller } from '../http/caller.ts';
import { refuseIfStale } from '../http/etag.ts';

const SHOWN = { id: true, name: true, since: true, until: true } as const;

@Injectable()
export class PartnerService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly trail: RecordTrail,
  ) {}

  list(caller: Caller): Promise<Partner[]> {
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      const rows = await records.partner.findMany({ where: { programmeId }, select: SHOWN, orderBy: { name: 'asc' } });
      return rows.map(toPartner);
    });
  }

  /** @throws DomainError `record/unknown` */
  one(caller: Caller, id: string): Promise<Partner> {
    return this.door.inTransaction(caller, (records) => this.#one(records, caller, id));
  }

  /** @throws DomainError `record/name-taken`, `record/id-reused` */
  make(caller: Caller, partner: NewPartner): Promise<Partner> {
    return this.door.inTransaction(caller, async (records) => {
      if (await this.trail.isNew(records, caller, 'partner', partner)) {
        await records.partner.create({ data: { programmeId: caller.programmeId, id: partner.id, ...toRow(partner) } });
      }
      return this.#one(records, caller, partner.id);
    });
  }

  /** @throws DomainError `record/unknown`, `record/name-taken`, `http/version-stale` */
  change(caller: Caller, id: string, content: PartnerContent, seen: string): Promise<Partner> {
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      const earlier = await this.#one(records, caller, id);
      refuseIfStale(seen, earlier);
      await records.partner.update({ where: { programmeId_id: { programmeId, id } }, data: toRow(content) });
      await this.trail.changed(records, caller, 'partner', id, before(earlier, { id, ...content }));
      return this.#one(records, caller, id);
    });
  }

  async #one(records: Records, { programmeId }: Caller, id: string): Promise<Partner> {
    return toPartner(known(await records.partner.findUnique({ where: { programmeId_id: { programmeId, id } }, select: SHOWN })));
  }
}

type Row = Prisma.PartnerGetPayload<{ select: typeof SHOWN }>;

const toPartner = (row: Row): Partner => ({ ...row, since: dayOf(row.since), until: dayOrNull(row.until) });

const toRow = ({ name, since, until }: PartnerContent) => ({ name, since: asDate(since), until: asDateOrNull(until) });
