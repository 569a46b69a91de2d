import { Injectable } from '@nestjs/common';
import { Trip, type TripInList, type TripQuery } from '@sprigline/contract';
import { dayOf } from '../database/day.ts';
import { known } from '../database/known.ts';
import type { Records } from '../database/prisma-door.ts';
import type { Caller } from '../http/caller.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';
import { TripWarningQueries } from './trip-warning.queries.ts';

@Injectable()
export class TripQueries {
  constructor(private readonly warnings: TripWarningQueries) {}

  /** Newest first, with sums instead of bundles. */
  async list(records: Records, programmeId: string, { standId, permissionId, after, limit }: TripQuery): Promise<Part<TripInList>> {
    const [day = null, id = null] = keysAfter(after, 2) ?? [];
    const rows = await records.$queryRaw<TripInList[]>`
      SELECT t.id, t.went_on::text AS "wentOn", t.stand_id AS "standId", t.permission_id AS "permissionId",
        t.led_by AS "ledBy", t.people::int, count(DISTINCT b.donor_tree_id)::int AS "donorTrees",
        coalesce(sum(b.cuttings), 0)::int AS cuttings
      FROM trip t LEFT JOIN bundle b ON b.programme_id = t.programme_id AND b.trip_id = t.id
      WHERE t.programme_id = ${programmeId}::uuid
        AND (${standId ?? null}::uuid IS NULL OR t.stand_id = ${standId ?? null}::uuid)
        AND (${permissionId ?? null}::uuid IS NULL OR t.permission_id = ${permissionId ?? null}::uuid)
        AND (${day}::date IS NULL OR (t.went_on, t.id) < (${day}::date, ${id}::uuid))
      GROUP BY t.programme_id, t.id ORDER BY t.went_on DESC, t.id DESC LIMIT ${limit + 1}`;
    return partOf(rows, limit, (trip) => [trip.wentOn, trip.id]);
  }

  /**
   * Only within a unit of work of the house, for the sake of the warnings.
   *
   * @throws DomainError `record/unknown`
   */
  async one(records: Records, caller: Caller, id: string): Promise<Trip> {
    const { programmeId } = caller;
    const row = known(await records.trip.findUnique({ where: { programmeId_id: { programmeId, id } }, omit: { programmeId: true } }));
    const bundles = await records.bundle.findMany({ where: { programmeId, tripId: id }, orderBy: { id: 'asc' } });
    const stuck = await stuckOf(records, programmeId, id);
    return Trip.parse({
      ...row,
      wentOn: dayOf(row.wentOn),
      bundles: bundles.map((bundle) => ({ ...bundle, stuck: stuck.get(bundle.id) ?? 0, heightM: bundle.heightM?.toNumber() ?? null, lengthCm: bundle.lengthCm?.toNumber() ?? null })),
      warnings: await this.warnings.of(records, caller, id),
    });
  }
}

/** Cuttings stuck so far, by bundle, as the books have them. */
async function stuckOf(records: Records, programmeId: string, tripId: string): Promise<Map<string, number>> {
  const rows = await records.$queryRaw<{ id: string; n: number }[]>`
    SELECT u.id, sum(m.n)::int AS n
    FROM bundle u
    JOIN sticking k ON k.programme_id = u.programme_id AND k.bundle_id = u.id
    JOIN batch b ON b.programme_id = k.programme_id AND b.sticking_id = k.id
    JOIN movement m ON m.programme_id = b.programme_id AND m.batch_id = b.id AND m.effect = 'stuck'
    WHERE u.programme_id = ${programmeId}::uuid AND u.trip_id = ${tripId}::uuid GROUP BY u.id`;
  return new Map(rows.map(({ id, n }) => [id, n]));
}
