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

  /** @throws DomainError `record/id-reused`, `record/no-such-place`, `record/no-such-person` */
  make(caller: Caller, workday: NewWorkday): Promise<Workday> {
    const { programmeId, personId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      const { personIds, ...rest } = workday;
      if (await this.trail.isNew(records, caller, 'workday', workday)) {
        await records.workday.create({ data: { programmeId, madeBy: personId, ...rest, day: asDate(workday.day) } });
        await namePeople(records, programmeId, workday.id, personIds);
      }
      return this.#one(records, caller, workday.id);
    });
  }

  /** @throws DomainError `record/unknown`, `record/not-yours`, `record/no-such-place`, `record/no-such-person`, `http/version-stale` */
  change(caller: Caller, id: string, content: WorkdayContent, seen: string): Promise<Workday> {
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      const earlier = await this.#one(records, caller, id);
      if (caller.role === 'volunteer' && earlier.madeBy !== caller.personId) {
        throw new DomainError('record/not-yours', 'ask a coordinator to change it');
      }
      refuseIfStale(seen, earlier);
      const { personIds, ...rest } = content;
      await records.workday.update({ where: { programmeId_id: { programmeId, id } }, data: { ...rest, day: asDate(content.day) } });
      await namePeople(records, programmeId, id, personIds);
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
    const people = await records.workdayPerson.findMany({ where: { programmeId, workdayId }, orderBy: { personId: 'asc' } });
    return rows.map((row) => ({
      ...row,
      day: dayOf(row.day),
      hours: row.hours?.toNumber() ?? null,
      personIds: people.filter((person) => person.workdayId === row.id).map(({ personId }) => personId),
      entries: entriesOf.get(row.id) ?? 0,
    }));
  }
}

/** Who was there; whoever is not named any more is taken off the list. */
async function namePeople(records: Records, programmeId: string, workdayId: string, personIds: readonly string[]): Promise<void> {
  await records.workdayPerson.deleteMany({ where: { programmeId, workdayId, personId: { notIn: [...personIds] } } });
  await records.workdayPerson.createMany({ data: [...new Set(personIds)].map((personId) => ({ programmeId, workdayId, personId })), skipDuplicates: true });
}
