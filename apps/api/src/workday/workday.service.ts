import { Injectable } from '@nestjs/common';
import type { NewWorkday, PageQuery, Workday, WorkdayContent } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { asDate, dayOf } from '../database/day.ts';
import type { Prisma } from '../database/generated/client.ts';
import { known } from '../database/known.ts';
import { PrismaDoor, type Records } from '../database/prisma-door.ts';
import { before, RecordTrail } from '../database/record-trail.ts';
import type { Caller } from '../http/caller.ts';
import { refuseIfStale } from '../http/etag.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';

const SHOWN = { id: true, day: true, placeId: true, tasks: true, others: true, children: true, hours: true, madeBy: true } as const;
type Row = Prisma.WorkdayGetPayload<{ select: typeof SHOWN }>;

@Injectable()
export class WorkdayService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly trail: RecordTrail,
  ) {}

  list(caller: Caller, { after, limit }: PageQuery): Promise<Part<Workday>> {
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      const [day, id] = keysAfter(after, 2) ?? [];
      const rows = await records.workday.findMany({
        where: { programmeId, ...(day && id && { OR: [{ day: { lt: asDate(day) } }, { day: asDate(day), id: { lt: id } }] }) },
        select: SHOWN,
        orderBy: [{ day: 'desc' }, { id: 'desc' }],
        take: limit + 1,
      });
      return partOf(await this.#withEntries(records, programmeId, rows), limit, (workday) => [workday.day, workday.id]);
    });
  }

  /** @throws DomainError `record/unknown` */
  one(caller: Caller, id: string): Promise<Workday> {
    return this.door.inTransaction(caller, (records) => this.#one(records, caller, id));
  }

  /** @throws DomainError `record/id-reused`, `record/no-such-place` */
  make(caller: Caller, workday: NewWorkday): Promise<Workday> {
    const { programmeId, personId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      if (await this.trail.isNew(records, caller, 'workday', workday)) {
        await records.workday.create({ data: { programmeId, madeBy: personId, ...workday, day: asDate(workday.day) } });
      }
      return this.#one(records, caller, workday.id);
    });
  }

  /** @throws DomainError `record/unknown`, `record/not-yours`, `record/no-such-place`, `http/version-stale` */
  change(caller: Caller, id: string, content: WorkdayContent, seen: string): Promise<Workday> {
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      const earlier = await this.#one(records, caller, id);
      if (caller.role === 'volunteer' && earlier.madeBy !== caller.personId) {
        throw new DomainError('record/not-yours', 'ask a coordinator to change it');
      }
      refuseIfStale(seen, earlier);
      await records.workday.update({ where: { programmeId_id: { programmeId, id } }, data: { ...content, day: asDate(content.day) } });
      await this.trail.changed(records, caller, 'workday', id, before(earlier, { ...earlier, ...content }));
      return this.#one(records, caller, id);
    });
  }

  async #one(records: Records, { programmeId }: Caller, id: string): Promise<Workday> {
    const row = known(await records.workday.findUnique({ where: { programmeId_id: { programmeId, id } }, select: SHOWN }));
    return known((await this.#withEntries(records, programmeId, [row]))[0]);
  }

  async #withEntries(records: Records, programmeId: string, rows: readonly Row[]): Promise<Workday[]> {
    const workdayId = { in: rows.map(({ id }) => id) };
    const counts = await records.entry.groupBy({ by: ['workdayId'], where: { programmeId, workdayId }, _count: true });
    const entriesOf = new Map(counts.map(({ workdayId: id, _count }) => [id, _count]));
    return rows.map((row) => ({ ...row, day: dayOf(row.day), hours: row.hours?.toNumber() ?? null, entries: entriesOf.get(row.id) ?? 0 }));
  }
}
