import { Injectable } from '@nestjs/common';
import type { HandoverReport } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { CLAIMS } from '../request/claims.queries.ts';
import { OPEN_DOUBTS } from '../review/review.queries.ts';

export type HandoverRows = Pick<HandoverReport, 'places' | 'people' | 'recipes' | 'unstuck' | 'promised' | 'held' | 'reviews'> & { readonly permissions: NonNullable<HandoverReport['permissions']> } & Record<string, unknown>;

const list = (name: string, select: string): string => `(SELECT coalesce(json_agg(x), '[]') FROM (${select}) x) AS ${name}`;

/** Trays are too many to hand over one by one: they are in the sums of where they stand. */
const PLACES = `
  SELECT t.id, t.name, t.kind, t.depth, t.note, coalesce(sum(h.batches), 0)::int AS batches, coalesce(sum(h.plants), 0)::int AS plants
  FROM tree t LEFT JOIN tree inner_one ON t.id = ANY (inner_one.ids) LEFT JOIN here h ON h.place_id = inner_one.id
  WHERE t.kind <> 'tray' AND t.depth <= 3 GROUP BY t.id, t.name, t.kind, t.depth, t.note, t.walk ORDER BY t.walk LIMIT 400`;

const HELD = `
  SELECT b.id, s.balance AS n, p.name AS place, (SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.batch_id = b.id ORDER BY l.given_at DESC, l.code LIMIT 1) AS label,
    h.observed_on AS since, h.body ->> 'reason' AS reason
  FROM batch_state s JOIN batch b ON b.programme_id = $1 AND b.id = s.batch_id JOIN place p ON p.programme_id = $1 AND p.id = s.place_id
  -- What held it first is told; under Held stands each of its reasons.
  LEFT JOIN entry h ON h.programme_id = $1 AND h.id = s.held_by[1]
  WHERE s.programme_id = $1 AND s.held AND s.balance > 0 ORDER BY h.observed_on, b.id LIMIT 300`;

const REVIEWS = `SELECT o.code, count(*)::int AS n, min(o.day) AS oldest FROM open o GROUP BY o.code ORDER BY o.code`;

const PERMISSIONS = `
  SELECT p.id, p.granted_by AS "grantedBy", p.land, p.valid_until AS "validUntil", p.quota, p.plants_owed_back AS "plantsOwedBack", u.used
  FROM permission p CROSS JOIN LATERAL (
    SELECT coalesce(sum(b.cuttings), 0)::int AS used FROM trip t JOIN bundle b ON b.programme_id = $1 AND b.trip_id = t.id WHERE t.programme_id = $1 AND t.permission_id = p.id) u
  WHERE p.programme_id = $1 AND (p.valid_until IS NULL OR p.valid_until >= $2::date) ORDER BY p.valid_until NULLS LAST, p.id`;

const PROMISED = `
  SELECT q.id, coalesce(q.outside, p.name) AS who, coalesce(t.common_name, t.scientific_name) AS taxon, q.stage, q.plants, q.wanted_on AS "wantedOn", q.state,
    (SELECT coalesce(sum(c.covered), 0)::int FROM claim c WHERE c.request_id = q.id) AS covered
  FROM request q LEFT JOIN partner p ON p.programme_id = $1 AND p.id = q.partner_id JOIN taxon t ON t.programme_id = $1 AND t.id = q.taxon_id
  WHERE q.programme_id = $1 AND q.state IN ('asked', 'promised', 'packed') ORDER BY q.wanted_on NULLS LAST, q.asked_on, q.id LIMIT 200`;

const UNSTUCK = `
  SELECT st.name AS stand, t.went_on AS "wentOn", (sum(u.cuttings) - coalesce(sum(k.n), 0))::int AS cuttings
  FROM trip t JOIN stand st ON st.programme_id = $1 AND st.id = t.stand_id JOIN bundle u ON u.programme_id = $1 AND u.trip_id = t.id
  LEFT JOIN LATERAL (
    SELECT sum(m.n) AS n FROM sticking s JOIN batch b ON b.programme_id = $1 AND b.sticking_id = s.id JOIN movement m ON m.programme_id = $1 AND m.batch_id = b.id AND m.effect = 'stuck'
    WHERE s.programme_id = $1 AND s.bundle_id = u.id) k ON true
  WHERE t.programme_id = $1 AND t.went_on > $2::date - 120 GROUP BY t.id, st.name, t.went_on HAVING sum(u.cuttings) > coalesce(sum(k.n), 0) ORDER BY t.went_on LIMIT 50`;

const HANDOVER = `
WITH RECURSIVE tree AS (
  SELECT id, kind, name::text AS name, note, 0 AS depth, ARRAY[id] AS ids, ARRAY[lpad(walk_order::text, 6, '0') || name] AS walk FROM place
  WHERE programme_id = $1 AND parent_id IS NULL AND closed_on IS NULL
  UNION ALL
  SELECT p.id, p.kind, p.name::text, p.note, t.depth + 1, t.ids || p.id, t.walk || (lpad(p.walk_order::text, 6, '0') || p.name) FROM tree t
  JOIN place p ON p.programme_id = $1 AND p.parent_id = t.id AND p.closed_on IS NULL
), here AS (SELECT place_id, count(*) AS batches, sum(balance) AS plants FROM batch_state WHERE programme_id = $1 AND balance > 0 GROUP BY place_id), claim AS (${CLAIMS}), ${OPEN_DOUBTS}
SELECT ${list('places', PLACES)}, ${list('held', HELD)}, ${list('reviews', REVIEWS)}, ${list('permissions', PERMISSIONS)}, ${list('unstuck', UNSTUCK)}, ${list('promised', PROMISED)},
  ${list('people', `SELECT name, role FROM person WHERE programme_id = $1 AND left_at IS NULL AND partner_id IS NULL ORDER BY array_position(ARRAY['owner', 'coordinator', 'volunteer'], role::text), name`)},
  ${list('recipes', `SELECT DISTINCT ON (r.name) r.name, v.version, v.hormone, v.hormone_ppm AS "hormonePpm", v.medium, v.wound, v.steps, v.made_on AS "madeOn"
    FROM recipe r JOIN recipe_version v ON v.programme_id = $1 AND v.recipe_id = r.id WHERE r.programme_id = $1 ORDER BY r.name, v.version DESC`)}`;

@Injectable()
export class HandoverQueries {
  async rows(sql: UnitOfWork, programmeId: string, today: string): Promise<HandoverRows> {
    return sql.one<HandoverRows>(HANDOVER, [programmeId, today]);
  }
}
