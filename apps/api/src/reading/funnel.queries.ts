import { Injectable } from '@nestjs/common';
import type { FunnelGroup, FunnelQuery } from '@sprigline/contract';
import type { StageTally } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { chosenStickings } from './chosen-stickings.ts';

type GroupRow = Omit<FunnelGroup, 'stages' | 'donors'> & { tallies: StageTally[] };

@Injectable()
export class FunnelQueries {
  /**
   * Tallies of the chosen stickings, summed up by group, donor (clone group) and stage.
   *
   * Built as JSON by PostgreSQL, group by group: one row a group leaves the database, whatever
   * the number of stickings.
   */
  async tallies(sql: UnitOfWork, programmeId: string, query: FunnelQuery): Promise<GroupRow[]> {
    const chosen = chosenStickings(programmeId, query);
    return sql.rows<GroupRow>(
      `WITH chosen AS (${chosen.text}),
       read AS (
         SELECT c.key, c.donor, t.* FROM chosen c
         JOIN tally t ON t.programme_id = $1 AND t.sticking_id = c.sticking_id),
       causes AS (
         SELECT key, donor, stage, jsonb_object_agg(cause, n) AS died FROM (
           SELECT key, donor, stage, dead_of.cause, sum(dead_of.plants::int) AS n
           FROM (SELECT key, donor, stage, died_of FROM read WHERE died > 0) dead CROSS JOIN LATERAL jsonb_each_text(died_of) dead_of (cause, plants)
           GROUP BY 1, 2, 3, 4) by_cause
         GROUP BY 1, 2, 3),
       sums AS (
         SELECT key, donor, stage, sum(came_in) AS came_in, sum(gone_on) AS gone_on,
                sum(unaccounted) AS unaccounted, sum(not_rooted) AS not_rooted, sum(thrown_out) AS thrown_out,
                sum(given_out) AS given_out, sum(restuck) AS restuck, sum(mixed) AS mixed, sum(mixed_in) AS mixed_in,
                sum(here) AS here, sum(not_found) AS not_found
         FROM read GROUP BY key, donor, stage),
       books AS (
         SELECT s.key, jsonb_agg(jsonb_strip_nulls(jsonb_build_object(
           'donorId', s.donor, 'stage', s.stage, 'cameIn', came_in, 'goneOn', gone_on,
           'died', coalesce(c.died, '{}'), 'unaccounted', unaccounted, 'notRooted', not_rooted, 'thrownOut', thrown_out,
           'givenOut', given_out, 'restuck', restuck, 'mixed', mixed, 'mixedIn', mixed_in, 'here', here, 'notFound', not_found))) AS tallies
         FROM sums s
         LEFT JOIN causes c ON c.key = s.key AND c.donor IS NOT DISTINCT FROM s.donor AND c.stage = s.stage
         GROUP BY s.key),
       heads AS (
         SELECT key, min(name) AS name, min(stuck_on) AS first_stuck_on, max(stuck_on) AS last_stuck_on,
                CASE WHEN count(DISTINCT stand_id) = 1 THEN min(stand_id::text) END AS stand_id,
                CASE WHEN count(DISTINCT taxon_id) = 1 THEN min(taxon_id::text) END AS taxon_id
         FROM chosen GROUP BY key)
       SELECT h.key, h.name, h.stand_id AS "standId", h.taxon_id AS "taxonId", t.scientific_name AS taxon, t.common_name AS "commonName",
              h.first_stuck_on AS "firstStuckOn", h.last_stuck_on AS "lastStuckOn", b.tallies
       FROM heads h JOIN books b ON b.key = h.key
       LEFT JOIN taxon t ON t.programme_id = $1 AND t.id = h.taxon_id::uuid
       ORDER BY h.key = '', h.name, t.scientific_name, h.key`,
      chosen.values,
    );
  }
}
