import { Injectable } from '@nestjs/common';
import type { Permission, TripWarning } from '@sprigline/contract';
import type { Records } from '../database/prisma-door.ts';
import type { Caller } from '../http/caller.ts';
import { PermissionQueries } from '../permission/permission.queries.ts';

/** What the warnings are about: a trip without its bundles. */
interface Outing {
  readonly id: string;
  readonly wentOn: string;
  readonly standId: string;
  readonly permissionId: string | null;
}

/** What to think twice about a trip. It has happened, so nothing is refused. */
@Injectable()
export class TripWarningQueries {
  constructor(private readonly permissions: PermissionQueries) {}

  /** Reads permissions, so only within a unit of work of the house; numbers go out only to the grant. */
  async of(records: Records, caller: Caller, trip: Outing): Promise<TripWarning[]> {
    const { programmeId } = caller;
    const cuts = await this.#recentCuts(records, programmeId, trip.id);
    if (trip.permissionId === null) return [{ code: 'no-permission' }, ...cuts];

    const permission = await this.permissions.one(records, programmeId, trip.permissionId);
    const others = await this.#treesOutside(records, programmeId, trip.id, permission);
    return [...aboutThePermission(permission, trip, others, caller.seesExact), ...cuts];
  }

  /** A donor tree is left alone for two years after it was cut: common practice of the trade, not a published figure. */
  async #recentCuts(records: Records, programmeId: string, tripId: string): Promise<TripWarning[]> {
    const rows = await records.$queryRaw<Array<{ donorTreeId: string; cutOn: string }>>`
      SELECT b.donor_tree_id AS "donorTreeId", max(before.went_on)::text AS "cutOn"
      FROM trip t
      JOIN bundle b ON b.programme_id = t.programme_id AND b.trip_id = t.id
      JOIN bundle earlier ON earlier.programme_id = b.programme_id AND earlier.donor_tree_id = b.donor_tree_id
      JOIN trip before ON before.programme_id = earlier.programme_id AND before.id = earlier.trip_id
      WHERE t.programme_id = ${programmeId}::uuid AND t.id = ${tripId}::uuid
        AND before.went_on < t.went_on AND before.went_on > t.went_on - interval '2 years'
      GROUP BY b.donor_tree_id ORDER BY 2 DESC, 1`;
    return rows.map((row) => ({ code: 'cut-recently', ...row }));
  }

  /** Whether a bundle is of another taxon than the permission names. */
  async #treesOutside(records: Records, programmeId: string, tripId: string, { taxonId }: Permission): Promise<boolean> {
    if (taxonId === null) return false;
    const rows = await records.$queryRaw<unknown[]>`
      SELECT 1 FROM bundle b JOIN donor_tree d ON d.programme_id = b.programme_id AND d.id = b.donor_tree_id
      WHERE b.programme_id = ${programmeId}::uuid AND b.trip_id = ${tripId}::uuid AND d.taxon_id <> ${taxonId}::uuid LIMIT 1`;
    return rows.length > 0;
  }
}

function aboutThePermission(permission: Permission, trip: Outing, otherTaxa: boolean, seesExact: boolean): TripWarning[] {
  const { used, quota, standId, validFrom, validUntil } = permission;
  const warnings: TripWarning[] = [];
  if (quota !== null && used > quota) warnings.push({ code: 'permission-overused', ...(seesExact && { used, quota }) });
  if (trip.wentOn < validFrom || (validUntil !== null && trip.wentOn > validUntil)) warnings.push({ code: 'permission-not-valid' });
  if (otherTaxa || (standId !== null && standId !== trip.standId)) warnings.push({ code: 'permission-for-other-trees' });
  return warnings;
}
