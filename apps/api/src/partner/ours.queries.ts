import { Injectable } from '@nestjs/common';
import type { Ours } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';

const STANDS = `
  SELECT coalesce(json_agg(json_build_object('id', st.id, 'name', st.name,
    'donorTrees', (SELECT count(*) FROM donor_tree d WHERE d.programme_id = $1 AND d.stand_id = st.id),
    'stuck', (SELECT coalesce(sum(t.came_in), 0) FROM donor_tree d JOIN sticking k ON k.programme_id = $1 AND k.donor_tree_id = d.id
      JOIN tally t ON t.programme_id = $1 AND t.sticking_id = k.id AND t.stage = 'cutting' WHERE d.programme_id = $1 AND d.stand_id = st.id),
    'plantsByStage', (SELECT coalesce(json_object_agg(stage, n), '{}') FROM (
      SELECT t.stage, sum(t.here)::int AS n FROM donor_tree d JOIN sticking k ON k.programme_id = $1 AND k.donor_tree_id = d.id
      JOIN tally t ON t.programme_id = $1 AND t.sticking_id = k.id WHERE d.programme_id = $1 AND d.stand_id = st.id
      GROUP BY t.stage HAVING sum(t.here) > 0) x)) ORDER BY st.name), '[]')
  FROM stand st WHERE st.programme_id = $1`;

/** All that came and did not move on: what lives, what was missed, and what was lost there. */
const SITES = `
  WITH RECURSIVE part AS (
    SELECT p.id AS site_id, p.id FROM place p WHERE p.programme_id = $1 AND p.kind = 'site'
    UNION ALL SELECT part.site_id, c.id FROM part JOIN place c ON c.programme_id = $1 AND c.parent_id = part.id
  ), lost AS (
    SELECT m.batch_id, coalesce(sum(m.n) FILTER (WHERE m.effect = 'died'), 0) AS died,
      coalesce(sum(m.n) FILTER (WHERE m.effect = 'thrownOut'), 0) AS thrown_out,
      coalesce(sum(m.n) FILTER (WHERE m.effect = 'unaccounted'), 0) - coalesce(sum(m.n) FILTER (WHERE m.effect = 'takenBack'), 0) AS unaccounted
    FROM movement m WHERE m.programme_id = $1 GROUP BY m.batch_id
  ), grown AS (
    SELECT part.site_id, t.id AS taxon_id, t.scientific_name, t.common_name, sum(s.balance) AS balance, sum(s.not_found) AS not_found,
      sum(lost.died) AS died, sum(lost.unaccounted) AS unaccounted, sum(lost.thrown_out) AS thrown_out, max(s.last_seen_on) AS last_seen_on,
      count(DISTINCT k.donor_tree_id) FILTER (WHERE s.balance > 0) AS donor_trees,
      coalesce(sum(s.balance) FILTER (WHERE k.donor_tree_id IS NULL), 0) AS of_unknown_tree
    FROM part JOIN batch_state s ON s.programme_id = $1 AND s.place_id = part.id
    JOIN batch b ON b.programme_id = $1 AND b.id = s.batch_id AND b.stage = 'planted'
    JOIN lost ON lost.batch_id = b.id
    LEFT JOIN sticking k ON k.programme_id = $1 AND k.id = b.sticking_id
    LEFT JOIN taxon t ON t.programme_id = $1 AND t.id = CASE WHEN k.id IS NULL THEN taxon_of_mixed(b.id) ELSE k.taxon_id END
    GROUP BY part.site_id, t.id, t.scientific_name, t.common_name
  )
  SELECT coalesce(json_agg(json_build_object('id', p.id, 'name', p.name,
    'plots', (SELECT count(*) FROM place c WHERE c.programme_id = $1 AND c.parent_id = p.id AND c.kind = 'plot' AND c.closed_on IS NULL),
    'species', (SELECT coalesce(json_agg(json_build_object('taxonId', g.taxon_id, 'taxon', g.scientific_name, 'commonName', g.common_name,
      'planted', g.balance + g.died + g.unaccounted + g.thrown_out, 'alive', g.balance - g.not_found, 'notFound', g.not_found, 'died', g.died,
      'unaccounted', g.unaccounted, 'thrownOut', g.thrown_out, 'donorTrees', g.donor_trees, 'ofUnknownTree', g.of_unknown_tree,
      'lastSeenOn', g.last_seen_on) ORDER BY g.scientific_name), '[]') FROM grown g WHERE g.site_id = p.id)
    ) ORDER BY p.walk_order, p.name), '[]')
  FROM place p WHERE p.programme_id = $1 AND p.kind = 'site'`;

const HANDS = `
  SELECT json_build_object('batches', count(*), 'plants', coalesce(sum(s.balance), 0), 'unconfirmed', count(*) FILTER (WHERE s.unconfirmed))
  FROM batch_state s WHERE s.programme_id = $1 AND s.balance > 0
    AND s.batch_id IN (SELECT batch_id FROM batch_partner WHERE programme_id = $1 AND relation = 'hands')`;

@Injectable()
export class OursQueries {
  constructor(private readonly database: Database) {}

  /** One query, and no filter but the programme: whose a row is, the policies know. */
  ours(caller: Caller): Promise<Ours> {
    return this.database.inTransaction(caller, (sql) =>
      sql.one<Ours & Record<string, unknown>>(
        `SELECT present_day(g.zone) AS "asOf", json_build_object('id', q.id, 'name', q.name, 'since', q.since, 'until', q.until) AS partner,
           (${STANDS}) AS stands, (${SITES}) AS sites, (${HANDS}) AS hands
         FROM programme g JOIN partner q ON q.programme_id = g.id WHERE g.id = $1`,
        [caller.programmeId],
      ));
  }
}
