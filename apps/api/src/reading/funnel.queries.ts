import { Injectable } from '@nestjs/common';
import type { FunnelQuery } from '@sprigline/contract';
import type { StageTally } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { chosenStickings } from './chosen-stickings.ts';

interface TallyRow extends Record<string, unknown> {
  key: string;
  name: string;
  tallies: StageTally[];
}

@Injectable()
export class FunnelQueries {
  /**
   * Tallies of the chosen stickings, summed up by group, donor (clone group) and stage.
   *
   * Built as JSON by PostgreSQL, group by group: one row a group leaves the database, whatever
   * the number of stickings.
   */
  async tallies(sql: UnitOfWork, programmeId: string, query: FunnelQuery): Promise<TallyRow[]> {
    const chosen = chosenStickings(programmeId, query);
    return sql.rows<TallyRow>(
      `WITH chosen AS (${chosen.text}),
       read AS (
         SELECT c.key, c.name, c.donor, c.stand_id, t.* FROM chosen c
         JOIN tally t ON t.programme_id = $1 AND t.sticking_id = c.sticking_id),
       causes AS (
         SELECT key, donor, stage, jsonb_object_agg(cause, n) AS died FROM (
           SELECT key, donor, stage, of.key AS cause, sum(of.value::int) AS n
           FROM (SELECT key, donor, stage, died_of FROM read WHERE died > 0) dead CROSS JOIN LATERAL jsonb_each_text(died_of) of
           GROUP BY 1, 2, 3, 4) by_cause
         GROUP BY 1, 2, 3),
       sums AS (
         SELECT key, min(name) AS name, donor, stand_id, stage, sum(came_in) AS came_in, sum(gone_on) AS gone_on,
                sum(unaccounted) AS unaccounted, sum(not_rooted) AS not_rooted, sum(thrown_out) AS thrown_out,
                sum(given_out) AS given_out, sum(restuck) AS restuck, sum(mixed) AS mixed, sum(mixed_in) AS mixed_in,
                sum(here) AS here, sum(not_found) AS not_found
         FROM read GROUP BY key, donor, stand_id, stage)
       SELECT s.key, min(s.name) AS name, jsonb_agg(jsonb_strip_nulls(jsonb_build_object(
         'donorId', s.donor, 'standId', s.stand_id, 'stage', s.stage, 'cameIn', came_in, 'goneOn', gone_on,
         'died', coalesce(c.died, '{}'), 'unaccounted', unaccounted, 'notRooted', not_rooted, 'thrownOut', thrown_out,
         'givenOut', given_out, 'restuck', restuck, 'mixed', mixed, 'mixedIn', mixed_in, 'here', here, 'notFound', not_found))) AS tallies
       FROM sums s
       LEFT JOIN causes c ON c.key = s.key AND c.donor IS NOT DISTINCT FROM s.donor AND c.stage = s.stage
       GROUP BY s.key ORDER BY 2`,
      chosen.values,
    );
  }

  /** Labels of donor trees, by the id that stands for their clone group in a reading. */
  async labels(sql: UnitOfWork, donorIds: readonly string[]): Promise<Map<string, string>> {
    const rows = await sql.rows<{ id: string; label: string }>(
      `SELECT coalesce(clone_group_id, id) AS id, string_agg(label, ' = ' ORDER BY label) AS label
       FROM donor_tree WHERE coalesce(clone_group_id, id) = ANY ($1::uuid[]) GROUP BY 1`,
      [donorIds],
    );
    return new Map(rows.map(({ id, label }) => [id, label]));
  }

  async head(sql: UnitOfWork, programmeId: string): Promise<{ asOf: string; rootedMeans: string }> {
    return sql.one(
      `SELECT (now() AT TIME ZONE zone)::date AS "asOf", rooted_means AS "rootedMeans" FROM programme WHERE id = $1`,
      [programmeId],
    );
  }
}
