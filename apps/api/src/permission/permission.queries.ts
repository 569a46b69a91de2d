import { Injectable } from '@nestjs/common';
import type { PageQuery, Permission } from '@sprigline/contract';
import { asDate, dayOf, dayOrNull } from '../database/day.ts';
import type { Prisma } from '../database/generated/client.ts';
import { known } from '../database/known.ts';
import type { Records } from '../database/prisma-door.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';

const SHOWN = {
  id: true, grantedBy: true, land: true, standId: true, taxonId: true, quota: true, validFrom: true, validUntil: true,
  terms: true, document: true, plantsOwedBack: true,
} as const;
type Row = Prisma.PermissionGetPayload<{ select: typeof SHOWN }>;

/** Permissions, which the database shows only to the grant, or to the house at work. */
@Injectable()
export class PermissionQueries {
  /** Last begun first, from after the last one of the part before. */
  async list(records: Records, programmeId: string, { after, limit }: PageQuery): Promise<Part<Permission>> {
    const [day, id] = keysAfter(after, 2) ?? [];
    const rows = await records.permission.findMany({
      where: { programmeId, ...(day && id && { OR: [{ validFrom: { lt: asDate(day) } }, { validFrom: asDate(day), id: { lt: id } }] }) },
      select: SHOWN,
      orderBy: [{ validFrom: 'desc' }, { id: 'desc' }],
      take: limit + 1,
    });
    return partOf(await this.#withUse(records, programmeId, rows), limit, (permission) => [permission.validFrom, permission.id]);
  }

  /** @throws DomainError `record/unknown` */
  async one(records: Records, programmeId: string, id: string): Promise<Permission> {
    const row = known(await records.permission.findUnique({ where: { programmeId_id: { programmeId, id } }, select: SHOWN }));
    return known((await this.#withUse(records, programmeId, [row]))[0]);
  }

  /** The permission that covers a stand on a day, if just one does. */
  async covering(records: Records, programmeId: string, standId: string, day: string): Promise<string | null> {
    const on = asDate(day);
    const rows = await records.permission.findMany({
      where: {
        programmeId,
        validFrom: { lte: on },
        AND: [{ OR: [{ standId }, { standId: null }] }, { OR: [{ validUntil: null }, { validUntil: { gte: on } }] }],
      },
      select: { id: true },
      take: 2,
    });
    return rows.length === 1 ? (rows[0]?.id ?? null) : null;
  }

  /** What is used up: all cuttings of all trips that name the permission. */
  async #withUse(records: Records, programmeId: string, rows: readonly Row[]): Promise<Permission[]> {
    const sums = await records.$queryRaw<Array<{ id: string; used: number }>>`
      SELECT t.permission_id AS id, sum(b.cuttings)::int AS used
      FROM trip t JOIN bundle b ON b.programme_id = t.programme_id AND b.trip_id = t.id
      WHERE t.programme_id = ${programmeId}::uuid AND t.permission_id = ANY (${rows.map(({ id }) => id)}::uuid[])
      GROUP BY t.permission_id`;
    const usedOf = new Map(sums.map(({ id, used }) => [id, used]));
    return rows.map((row) => ({
      ...row,
      validFrom: dayOf(row.validFrom),
      validUntil: dayOrNull(row.validUntil),
      used: usedOf.get(row.id) ?? 0,
    }));
  }
}
