import { Injectable } from '@nestjs/common';
import type { ReadingFilter } from '@sprigline/contract';
import type { StandPlants } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { chosenStickings } from './chosen-stickings.queries.ts';
import { UNSURE_PLANTS } from './unsure-plants.ts';

export interface StandRow extends Record<string, unknown> {
  standId: string;
  stand: string;
  taxonId: string;
  taxon: string;
  commonName: string | null;
  donorTrees: number;
  assumedDistinct: number;
  plants: StandPlants[];
}

@Injectable()
export class DiversityQueries {
  /**
   * Per stand and taxon, the plants here now by donor (clone group) and stage; plants of
   * mixed batches and of stickings whose donor is unknown with the donors they may be of.
   */
  async stands(sql: UnitOfWork, programmeId: string, filter: ReadingFilter): Promise<StandRow[]> {
    const chosen = chosenStickings(programmeId, { ...filter, by: 'all' });
    const [stand, taxon] = [`$${chosen.values.length + 1}`, `$${chosen.values.length + 2}`];
    return sql.rows<StandRow>(
      `WITH RECURSIVE chosen AS (${chosen.text}),
       known AS (
         SELECT c.stand_id, c.taxon_id, json_build_object('stage', t.stage, 'donorId', c.donor, 'plants', sum(t.here)) AS row
         FROM chosen c
         JOIN tally t ON t.programme_id = $1 AND t.sticking_id = c.sticking_id AND t.here > 0
         WHERE c.donor IS NOT NULL GROUP BY c.stand_id, c.taxon_id, t.stage, c.donor),
       ${UNSURE_PLANTS},
       -- Once, and not again for every stand.
       plants AS MATERIALIZED (
         SELECT stand_id, taxon_id, json_agg(row) AS rows FROM (
           SELECT stand_id, taxon_id, row FROM known
           UNION ALL
           SELECT stand_id, taxon_id, json_build_object('stage', stage, 'plants', balance, 'candidates', candidates) FROM unsure) every
         GROUP BY stand_id, taxon_id),
       trees AS (
         SELECT stand_id, taxon_id, count(*)::int AS donor_trees, count(*) FILTER (WHERE clone_group_id IS NULL)::int AS assumed_distinct
         FROM donor_tree
         WHERE programme_id = $1 AND (${stand}::uuid IS NULL OR stand_id = ${stand}) AND (${taxon}::uuid IS NULL OR taxon_id = ${taxon})
         GROUP BY stand_id, taxon_id)
       SELECT st.id AS "standId", st.name AS stand, t.id AS "taxonId", t.scientific_name AS taxon, t.common_name AS "commonName",
              trees.donor_trees AS "donorTrees", trees.assumed_distinct AS "assumedDistinct", coalesce(plants.rows, '[]') AS plants
       FROM trees
       JOIN stand st ON st.programme_id = $1 AND st.id = trees.stand_id
       JOIN taxon t ON t.programme_id = $1 AND t.id = trees.taxon_id
       LEFT JOIN plants ON plants.stand_id = st.id AND plants.taxon_id = t.id
       ORDER BY st.name, t.scientific_name`,
      [...chosen.values, filter.standId ?? null, filter.taxonId ?? null],
    );
  }
}
