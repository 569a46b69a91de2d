import { Injectable } from '@nestjs/common';
import type { PermissionEnding } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import { refuseWithoutTheGrant } from '../http/grant.ts';

/** One that ended long ago and whose quota is used up is history, and told no more. */
const ENDING = `
WITH told AS (
  SELECT p.id, p.granted_by, p.land, p.valid_until, p.quota, present_day(g.zone) AS today,
    coalesce((SELECT sum(b.cuttings) FROM trip t JOIN bundle b ON b.programme_id = $1 AND b.trip_id = t.id
      WHERE t.programme_id = $1 AND t.permission_id = p.id), 0)::int AS used
  FROM permission p JOIN programme g ON g.id = $1 WHERE p.programme_id = $1
), near AS (
  SELECT *, valid_until <= today + 60 AS is_near, coalesce(used >= quota * 0.9, false) AS is_used FROM told
  WHERE valid_until IS NULL OR valid_until >= today - 60
)
SELECT id, granted_by AS "grantedBy", land, CASE WHEN is_near THEN valid_until END AS "validUntil", coalesce(valid_until < today, false) AS "isPast",
  quota, used, is_used AS "isNearlyUsed"
FROM near WHERE is_near OR is_used ORDER BY valid_until NULLS LAST, land, id LIMIT 200`;

/** What a coordinator must ask for anew before the next trip. */
@Injectable()
export class PermissionEndingQueries {
  constructor(private readonly database: Database) {}

  /** @throws DomainError `place/grant-needed` */
  async ending(caller: Caller): Promise<PermissionEnding[]> {
    refuseWithoutTheGrant(caller);
    return this.database.inTransaction(caller, (sql) => sql.rows<PermissionEnding & Record<string, unknown>>(ENDING, [caller.programmeId]));
  }
}
