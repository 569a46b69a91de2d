import { Injectable } from '@nestjs/common';
import type { TrayCards } from '@sprigline/contract';
import { known } from '../database/known.ts';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';

/** Cuttings stuck from a bundle, tray by tray, as the books have them. */
const STUCK = `
  SELECT b.id AS "batchId", (SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.batch_id = b.id ORDER BY l.given_at DESC, l.code LIMIT 1) AS label,
    sum(m.n)::int AS n, b.rows, p.name AS place, b.medium, k.stuck_on AS "stuckOn", (
      SELECT r.name FROM recipe_version v JOIN recipe r ON r.programme_id = $1 AND r.id = v.recipe_id WHERE v.programme_id = $1 AND v.id = k.recipe_version_id) AS recipe
  FROM sticking k
  JOIN batch b ON b.programme_id = $1 AND b.sticking_id = k.id
  JOIN movement m ON m.programme_id = $1 AND m.batch_id = b.id AND m.effect = 'stuck'
  JOIN batch_state s ON s.programme_id = $1 AND s.batch_id = b.id
  JOIN place p ON p.programme_id = $1 AND p.id = s.place_id
  WHERE k.programme_id = $1 AND k.bundle_id = u.id
  GROUP BY b.id, b.rows, b.medium, p.name, k.stuck_on, k.recipe_version_id`;

const CARDS = `
SELECT t.went_on AS "wentOn", json_build_object('id', st.id, 'name', st.name) AS stand, (
  SELECT coalesce(json_agg(x ORDER BY x.tree, x.id), '[]') FROM (
    SELECT u.id, d.label AS tree, json_build_object('id', d.id, 'label', d.label) AS "donorTree", a.scientific_name AS taxon, u.cuttings,
      (SELECT coalesce(json_agg(k ORDER BY k.label, k."batchId"), '[]') FROM (${STUCK}) k) AS stuck
    FROM bundle u JOIN donor_tree d ON d.programme_id = $1 AND d.id = u.donor_tree_id JOIN taxon a ON a.programme_id = $1 AND a.id = d.taxon_id
    WHERE u.programme_id = $1 AND u.trip_id = t.id) x) AS bundles
FROM trip t JOIN stand st ON st.programme_id = $1 AND st.id = t.stand_id WHERE t.programme_id = $1 AND t.id = $2`;

@Injectable()
export class TrayCardQueries {
  constructor(private readonly database: Database) {}

  /** @throws DomainError `record/unknown` */
  of(caller: Caller, tripId: string): Promise<TrayCards> {
    return this.database.inTransaction(caller, async (sql) => {
      const trip = known(await sql.maybe<TrayCards & Record<string, unknown>>(CARDS, [caller.programmeId, tripId]));
      const bundles = trip.bundles.map((bundle) => ({ ...bundle, left: Math.max(bundle.cuttings - bundle.stuck.reduce((sum, { n }) => sum + n, 0), 0) }));
      return { ...trip, bundles };
    });
  }
}
