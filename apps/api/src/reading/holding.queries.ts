import { Injectable } from '@nestjs/common';
import type { DonorHolding, ReadingFilter } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { chosenStickings } from './chosen-stickings.queries.ts';

export type HoldingRow = Omit<DonorHolding, 'risks'>;

@Injectable()
export class HoldingQueries {
  /** What is left of each donor: rooted plants at every stage together, in how many places, and how its wild tree stands. */
  async holdings(sql: UnitOfWork, programmeId: string, filter: ReadingFilter): Promise<HoldingRow[]> {
    const chosen = chosenStickings(programmeId, { ...filter, by: 'all' });
    return sql.rows<HoldingRow>(
      `WITH chosen AS (${chosen.text}),
       stood AS (
         SELECT c.donor, b.stage, x.balance, x.rooted_now, x.rooted_ever,
                CASE WHEN pl.kind = 'tray' THEN coalesce(pl.parent_id, pl.id) ELSE pl.id END AS place_id,
                -- Received as young plants or older: rooted when they came.
                CASE WHEN b.parent_id IS NULL AND b.stage <> 'cutting'
                     THEN (SELECT coalesce(sum(n), 0) FROM movement m WHERE m.programme_id = $1 AND m.batch_id = b.id AND m.effect = 'received')
                     ELSE 0 END AS came_rooted
         FROM chosen c
         JOIN batch b ON b.programme_id = $1 AND b.sticking_id = c.sticking_id
         JOIN batch_state x ON x.programme_id = $1 AND x.batch_id = b.id
         JOIN place pl ON pl.programme_id = $1 AND pl.id = x.place_id
         WHERE c.donor IS NOT NULL),
       left_of AS (
         SELECT donor,
                CASE WHEN bool_or(balance > 0) AND bool_and(balance = 0 OR (stage = 'cutting' AND rooted_now IS NULL)) THEN NULL
                     ELSE sum(CASE WHEN stage = 'cutting' THEN coalesce(rooted_now, 0) ELSE balance END)::int END AS rooted_now,
                sum(CASE WHEN stage = 'cutting' THEN rooted_ever ELSE came_rooted END)::int AS rooted_ever,
                sum(balance)::int AS plants,
                count(DISTINCT place_id) FILTER (WHERE balance > 0)::int AS places
         FROM stood GROUP BY donor),
       trees AS (
         SELECT coalesce(d.clone_group_id, d.id) AS donor, (array_agg(d.id ORDER BY d.label))[1] AS tree_id, string_agg(d.label, ' = ' ORDER BY d.label) AS label,
                (array_agg(d.state ORDER BY array_position(ARRAY['standing', 'unknown', 'notSeen', 'dead'], d.state)))[1] AS state
         FROM donor_tree d WHERE d.programme_id = $1 AND coalesce(d.clone_group_id, d.id) IN (SELECT donor FROM left_of) GROUP BY 1)
       SELECT l.donor AS "donorId", trees.tree_id AS "treeId", trees.label, st.name AS stand, st.id AS "standId",
              t.scientific_name AS taxon, t.common_name AS "commonName",
              l.rooted_now AS "rootedNow", l.rooted_ever AS "rootedEver", l.plants, l.places, trees.state AS "wildTree"
       FROM left_of l
       JOIN trees ON trees.donor = l.donor
       JOIN donor_tree d ON d.programme_id = $1 AND d.id = trees.tree_id
       JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id
       JOIN taxon t ON t.programme_id = $1 AND t.id = d.taxon_id
       ORDER BY l.rooted_now NULLS LAST, l.plants, trees.label`,
      chosen.values,
    );
  }
}
