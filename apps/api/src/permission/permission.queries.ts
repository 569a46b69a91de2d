import { Injectable } from '@nestjs/common';
import type { PageQuery, Permission } from '@sprigline/contract';
import { asDate, dayOf, dayOrNull } from '../database/day.ts';
import type { Prisma } from '../database/generated/client.ts';
import { known } from '../database/known.ts';
import type { Records } from '../database/prisma-door.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';

const SHOWN = {
  id: true, grantedBy: true, land: true, standId: true, quota: true, validFrom: true, validUntil: true,
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

  /** Names the species, and leaves out those that are named no longer. */
  async nameTaxa(records: Records, programmeId: string, permissionId: string, taxonIds: readonly string[]): Promise<void> {
    await records.permissionTaxon.deleteMany({ where: { programmeId, permissionId, taxonId: { notIn: [...taxonIds] } } });
    await records.permissionTaxon.createMany({ data: [...new Set(taxonIds)].map((taxonId) => ({ programmeId, permissionId, taxonId })), skipDuplicates: true });
  }

  /** What is used up: all cuttings of all trips that name the permission; and what was given back, as the books have it now. */
  async #withUse(records: Records, programmeId: string, rows: readonly Row[]): Promise<Permission[]> {
    const sums = await records.$queryRaw<Array<{ id: string; used: number; givenBack: number; taxonIds: string[] }>>`
      SELECT p.id, ARRAY(SELECT x.taxon_id::text FROM permission_taxon x WHERE x.programme_id = p.programme_id AND x.permission_id = p.id ORDER BY x.taxon_id) AS "taxonIds",
        (SELECT coalesce(sum(b.cuttings), 0)::int FROM trip t JOIN bundle b ON b.programme_id = t.programme_id AND b.trip_id = t.id
          WHERE t.programme_id = p.programme_id AND t.permission_id = p.id) AS used,
        (SELECT coalesce(sum(m.n), 0)::int FROM request q JOIN despatch d ON d.programme_id = q.programme_id AND d.request_id = q.id
          JOIN movement m ON m.programme_id = d.programme_id AND m.entry_id = d.entry_id AND m.batch_id = d.batch_id AND m.effect IN ('wentOn', 'givenOut', 'givenAcross')
          WHERE q.programme_id = p.programme_id AND q.permission_id = p.id) AS "givenBack"
      FROM permission p WHERE p.programme_id = ${programmeId}::uuid AND p.id = ANY (${rows.map(({ id }) => id)}::uuid[])`;
    const sumsOf = new Map(sums.map((sum) => [sum.id, sum]));
    return rows.map((row) => ({
      ...row,
      validFrom: dayOf(row.validFrom),
      validUntil: dayOrNull(row.validUntil),
      used: 0, givenBack: 0, taxonIds: [], ...sumsOf.get(row.id),
    }));
  }
}
