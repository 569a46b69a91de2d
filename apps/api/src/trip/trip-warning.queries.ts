import { Injectable } from '@nestjs/common';
import type { LastCut, LastCutQuery, TripWarning } from '@sprigline/contract';
import type { Records } from '../database/prisma-door.ts';
import type { Caller } from '../http/caller.ts';

/** What the warnings follow from. */
interface Weighed {
  readonly hasPermission: boolean;
  readonly quota: number | null;
  /** Cuttings taken under the permission, on all trips. */
  readonly used: number;
  readonly isValid: boolean;
  readonly isForOthers: boolean;
  readonly cuts: ReadonlyArray<{ readonly donorTreeId: string; readonly cutOn: string }>;
}

/** What to think twice about a trip. It has happened, so nothing is refused. */
@Injectable()
export class TripWarningQueries {
  /** Reads the permission, so only within a unit of work of the house; numbers go out only to the grant. */
  async of(records: Records, { programmeId, seesExact }: Caller, tripId: string): Promise<TripWarning[]> {
    const [weighed] = await this.#weigh(records, programmeId, tripId);
    return weighed ? warningsOf(weighed, seesExact) : [];
  }

  /** Trees of a stand that were cut within two years before a day, each with the last time. */
  lastCuts(records: Records, programmeId: string, { standId, on }: LastCutQuery): Promise<LastCut[]> {
    return records.$queryRaw<LastCut[]>`
      SELECT b.donor_tree_id AS "donorTreeId", max(t.went_on)::text AS "cutOn"
      FROM donor_tree d JOIN bundle b ON b.programme_id = d.programme_id AND b.donor_tree_id = d.id JOIN trip t ON t.programme_id = b.programme_id AND t.id = b.trip_id
      WHERE d.programme_id = ${programmeId}::uuid AND d.stand_id = ${standId}::uuid
        AND t.went_on < ${on}::date AND t.went_on > ${on}::date - interval '2 years'
      GROUP BY b.donor_tree_id ORDER BY b.donor_tree_id`;
  }

  /** A donor tree is left alone for two years after it was cut: common practice of the trade, not a published figure. */
  #weigh(records: Records, programmeId: string, tripId: string): Promise<Weighed[]> {
    return records.$queryRaw<Weighed[]>`
      SELECT t.permission_id IS NOT NULL AS "hasPermission", p.quota,
        t.went_on BETWEEN p.valid_from AND coalesce(p.valid_until, 'infinity') AS "isValid",
        p.stand_id IS DISTINCT FROM t.stand_id AND p.stand_id IS NOT NULL OR EXISTS (
          SELECT FROM bundle b JOIN donor_tree d ON d.programme_id = b.programme_id AND d.id = b.donor_tree_id
          WHERE b.programme_id = t.programme_id AND b.trip_id = t.id
            AND EXISTS (SELECT FROM permission_taxon x WHERE x.programme_id = p.programme_id AND x.permission_id = p.id)
            AND NOT EXISTS (SELECT FROM permission_taxon x WHERE x.programme_id = p.programme_id AND x.permission_id = p.id AND x.taxon_id = d.taxon_id)
        ) AS "isForOthers",
        (SELECT coalesce(sum(b.cuttings), 0)::int
          FROM trip o JOIN bundle b ON b.programme_id = o.programme_id AND b.trip_id = o.id
          WHERE o.programme_id = t.programme_id AND o.permission_id = t.permission_id) AS used,
        (SELECT coalesce(jsonb_agg(jsonb_build_object('donorTreeId', c.donor_tree_id, 'cutOn', c.cut_on) ORDER BY c.donor_tree_id), '[]')
          FROM (
            SELECT b.donor_tree_id, max(o.went_on) AS cut_on
            FROM bundle b
            JOIN bundle e ON e.programme_id = b.programme_id AND e.donor_tree_id = b.donor_tree_id
            JOIN trip o ON o.programme_id = e.programme_id AND o.id = e.trip_id
            WHERE b.programme_id = t.programme_id AND b.trip_id = t.id
              AND o.went_on < t.went_on AND o.went_on > t.went_on - interval '2 years'
            GROUP BY b.donor_tree_id
          ) AS c) AS cuts
      FROM trip t LEFT JOIN permission p ON p.programme_id = t.programme_id AND p.id = t.permission_id
      WHERE t.programme_id = ${programmeId}::uuid AND t.id = ${tripId}::uuid`;
  }
}

function warningsOf({ hasPermission, quota, used, isValid, isForOthers, cuts }: Weighed, seesExact: boolean): TripWarning[] {
  const warnings: TripWarning[] = [];
  if (!hasPermission) warnings.push({ code: 'no-permission' });
  if (quota !== null && used > quota) warnings.push({ code: 'permission-overused', ...(seesExact && { used, quota }) });
  if (hasPermission && !isValid) warnings.push({ code: 'permission-not-valid' });
  if (isForOthers) warnings.push({ code: 'permission-for-other-trees' });
  return [...warnings, ...cuts.map((cut): TripWarning => ({ code: 'cut-recently', ...cut }))];
}
