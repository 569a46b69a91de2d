import { Injectable } from '@nestjs/common';
import type { ReadingFilter, ReadingLine } from '@sprigline/contract';
import type { StageTally } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { chosenStickings } from './chosen-stickings.queries.ts';

type Head = Pick<ReadingLine, 'key' | 'name' | 'standId' | 'taxonId' | 'taxon' | 'commonName' | 'donors'>;

export interface LineRow extends Head, Record<string, unknown> {
  /** All donors of the line together, stage by stage. */
  readonly stages: (Omit<StageTally, 'died' | 'donorId'> & { readonly deaths: number; readonly donors: number })[];
}

@Injectable()
export class LineQueries {
  /** Sums of the chosen stickings, a row for each stand and species, however many donor trees that are. */
  async lines(sql: UnitOfWork, programmeId: string, filter: ReadingFilter): Promise<LineRow[]> {
    const chosen = chosenStickings(programmeId, { ...filter, by: 'all' });
    return sql.rows<LineRow>(
      `WITH chosen AS (${chosen.text}),
       sums AS (
         SELECT c.stand_id, c.taxon_id, c.donor, t.stage, sum(t.came_in) AS came_in, sum(t.gone_on) AS gone_on, sum(t.died) AS died, sum(t.unaccounted) AS unaccounted,
                sum(t.not_rooted) AS not_rooted, sum(t.thrown_out) AS thrown_out, sum(t.given_out) AS given_out, sum(t.restuck) AS restuck,
                sum(t.mixed) AS mixed, sum(t.mixed_in) AS mixed_in, sum(t.here) AS here, sum(t.not_found) AS not_found
         FROM chosen c JOIN tally t ON t.programme_id = $1 AND t.sticking_id = c.sticking_id
         GROUP BY c.stand_id, c.taxon_id, c.donor, t.stage),
       stages AS (
         SELECT stand_id, taxon_id, json_agg(json_build_object(
           'stage', stage, 'cameIn', came_in, 'goneOn', gone_on, 'deaths', died, 'unaccounted', unaccounted, 'notRooted', not_rooted, 'thrownOut', thrown_out,
           'givenOut', given_out, 'restuck', restuck, 'mixed', mixed, 'mixedIn', mixed_in, 'here', here, 'notFound', not_found, 'donors', donors)) AS stages
         FROM (
           SELECT stand_id, taxon_id, stage, sum(came_in) AS came_in, sum(gone_on) AS gone_on, sum(died) AS died, sum(unaccounted) AS unaccounted, sum(not_rooted) AS not_rooted,
                  sum(thrown_out) AS thrown_out, sum(given_out) AS given_out, sum(restuck) AS restuck, sum(mixed) AS mixed, sum(mixed_in) AS mixed_in,
                  sum(here) AS here, sum(not_found) AS not_found, count(donor) FILTER (WHERE came_in > 0) AS donors
           FROM sums GROUP BY stand_id, taxon_id, stage) by_stage
         GROUP BY stand_id, taxon_id),
       donors AS (
         SELECT stand_id, taxon_id, count(DISTINCT donor) FILTER (WHERE came_in > 0)::int AS came, count(DISTINCT donor) FILTER (WHERE here > 0)::int AS left_
         FROM sums GROUP BY stand_id, taxon_id)
       -- Never two species in one line: the loss of either would not be seen.
       SELECT coalesce(s.stand_id::text, '') || '/' || s.taxon_id AS key, coalesce(st.name, '') AS name, s.stand_id AS "standId",
              x.id AS "taxonId", x.scientific_name AS taxon, x.common_name AS "commonName",
              json_build_object('came', d.came, 'left', d.left_) AS donors, s.stages
       FROM stages s
       JOIN donors d ON d.taxon_id = s.taxon_id AND d.stand_id IS NOT DISTINCT FROM s.stand_id
       JOIN taxon x ON x.programme_id = $1 AND x.id = s.taxon_id
       LEFT JOIN stand st ON st.programme_id = $1 AND st.id = s.stand_id`,
      chosen.values,
    );
  }
}
