import { Injectable } from '@nestjs/common';
import type { ReadingFilter } from '@sprigline/contract';
import type { DonorHolding, StandPlants } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { chosenStickings, SEASON_NAME } from './chosen-stickings.ts';

interface StandRow extends Record<string, unknown> {
  stand_id: string;
  stand: string;
  taxon_id: string;
  taxon: string;
  donor_trees: number;
  assumed_distinct: number;
  plants: StandPlants[];
}

export interface HoldingRow extends Omit<DonorHolding, 'rootedEarlier' | 'rootedNow'>, Record<string, unknown> {
  label: string;
  stand: string;
  taxon: string;
  rootedNow: number | null;
  rootedEver: number;
}

@Injectable()
export class DiversityQueries {
  /**
   * Per stand and taxon, the plants here now by donor (clone group) and stage; plants of
   * mixed batches and of stickings whose donor is unknown with the donors they may be of.
   */
  async stands(sql: UnitOfWork, programmeId: string, filter: ReadingFilter): Promise<StandRow[]> {
    const chosen = chosenStickings(programmeId, { ...filter, by: 'all' });
    return sql.rows<StandRow>(
      `WITH chosen AS (${chosen.text}),
       known AS (
         SELECT c.stand_id, s.taxon_id, jsonb_build_object('stage', t.stage, 'donorId', c.donor, 'plants', sum(t.here)) AS row
         FROM chosen c
         JOIN sticking s ON s.programme_id = $1 AND s.id = c.sticking_id
         JOIN tally t ON t.programme_id = $1 AND t.sticking_id = c.sticking_id AND t.here > 0
         WHERE c.donor IS NOT NULL GROUP BY c.stand_id, s.taxon_id, t.stage, c.donor),
       unsure AS (
         -- A batch counts for a stand when every donor tree it may be of stands there.
         SELECT b.id, b.stage, x.balance, min(d.stand_id::text)::uuid AS stand_id, min(d.taxon_id::text)::uuid AS taxon_id,
                jsonb_agg(DISTINCT coalesce(d.clone_group_id, d.id)) AS candidates
         FROM batch b
         JOIN batch_state x ON x.programme_id = $1 AND x.batch_id = b.id AND x.balance > 0
         LEFT JOIN mixed_part m ON m.programme_id = $1 AND m.batch_id = b.id
         LEFT JOIN batch mb ON mb.programme_id = $1 AND mb.id = m.from_batch_id
         LEFT JOIN sticking s ON s.programme_id = $1 AND s.id = coalesce(b.sticking_id, mb.sticking_id)
         LEFT JOIN sticking_candidate sc ON sc.programme_id = $1 AND sc.sticking_id = s.id
         JOIN donor_tree d ON d.programme_id = $1 AND d.id = coalesce(s.donor_tree_id, sc.donor_tree_id)
         WHERE b.programme_id = $1 AND (b.sticking_id IS NULL OR s.donor_tree_id IS NULL)
         GROUP BY b.id, b.stage, x.balance HAVING count(DISTINCT d.stand_id) = 1),
       plants AS (
         SELECT stand_id, taxon_id, row FROM known
         UNION ALL
         SELECT stand_id, taxon_id, jsonb_build_object('stage', stage, 'plants', balance, 'candidates', candidates) FROM unsure)
       SELECT st.id AS stand_id, st.name AS stand, t.id AS taxon_id, t.scientific_name AS taxon,
              count(DISTINCT d.id)::int AS donor_trees,
              count(DISTINCT d.id) FILTER (WHERE d.clone_group_id IS NULL)::int AS assumed_distinct,
              (SELECT coalesce(jsonb_agg(row), '[]') FROM plants WHERE plants.stand_id = st.id AND plants.taxon_id = t.id) AS plants
       FROM donor_tree d
       JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id
       JOIN taxon t ON t.programme_id = $1 AND t.id = d.taxon_id
       WHERE d.programme_id = $1 AND ($${chosen.values.length + 1}::uuid IS NULL OR st.id = $${chosen.values.length + 1})
         AND ($${chosen.values.length + 2}::uuid IS NULL OR t.id = $${chosen.values.length + 2})
       GROUP BY st.id, st.name, t.id, t.scientific_name ORDER BY st.name, t.scientific_name`,
      [...chosen.values, filter.standId ?? null, filter.taxonId ?? null],
    );
  }

  /** What is left of each donor: rooted plants at every stage together, in how many places, and how its wild tree stands. */
  async holdings(sql: UnitOfWork, programmeId: string, filter: ReadingFilter): Promise<HoldingRow[]> {
    const chosen = chosenStickings(programmeId, { ...filter, by: 'all' });
    return sql.rows<HoldingRow>(
      `WITH chosen AS (${chosen.text}),
       stood AS (
         SELECT c.donor, b.stage, x.balance, x.rooted_now, x.rooted_ever,
                CASE WHEN pl.kind = 'tray' THEN coalesce(pl.parent_id, pl.id) ELSE pl.id END AS place_id,
                b.parent_id IS NULL AND b.stage <> 'cutting' AS came_rooted,
                (SELECT coalesce(sum(n), 0) FROM movement m WHERE m.programme_id = $1 AND m.batch_id = b.id AND m.effect = 'received') AS received
         FROM chosen c
         JOIN batch b ON b.programme_id = $1 AND b.sticking_id = c.sticking_id
         JOIN batch_state x ON x.programme_id = $1 AND x.batch_id = b.id
         JOIN place pl ON pl.programme_id = $1 AND pl.id = x.place_id
         WHERE c.donor IS NOT NULL)
       SELECT donor AS "donorId", string_agg(DISTINCT d.label, ' = ') AS label, min(st.name) AS stand, min(t.scientific_name) AS taxon,
              CASE WHEN bool_and(stage = 'cutting' AND rooted_now IS NULL AND balance > 0 OR balance = 0) AND bool_or(balance > 0) THEN NULL
                   ELSE sum(CASE WHEN stage = 'cutting' THEN coalesce(rooted_now, 0) ELSE balance END)::int END AS "rootedNow",
              sum(CASE WHEN stage = 'cutting' THEN rooted_ever WHEN came_rooted THEN received ELSE 0 END)::int AS "rootedEver",
              count(DISTINCT place_id) FILTER (WHERE balance > 0)::int AS places,
              (array_agg(d.state ORDER BY array_position(ARRAY['standing', 'unknown', 'notSeen', 'dead'], d.state)))[1] AS "wildTree"
       FROM stood
       JOIN donor_tree d ON d.programme_id = $1 AND coalesce(d.clone_group_id, d.id) = stood.donor
       JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id
       JOIN taxon t ON t.programme_id = $1 AND t.id = d.taxon_id
       GROUP BY donor ORDER BY 2`,
      chosen.values,
    );
  }

  async choices(sql: UnitOfWork, programmeId: string) {
    const rows = await sql.rows<{ kind: string; id: string; name: string }>(
      `SELECT 'stand' AS kind, id::text, name FROM stand WHERE programme_id = $1
       UNION ALL SELECT 'taxon', id::text, scientific_name FROM taxon WHERE programme_id = $1
       UNION ALL SELECT 'recipe', id::text, name FROM recipe WHERE programme_id = $1
       UNION ALL SELECT DISTINCT 'season', extract(year FROM s.stuck_on - make_interval(months => p.season_starts_in - 1))::int::text, ${SEASON_NAME}
         FROM sticking s JOIN programme p ON p.id = s.programme_id WHERE s.programme_id = $1 AND s.stuck_on IS NOT NULL
       ORDER BY 3`,
      [programmeId],
    );
    const of = (kind: string) => rows.filter((row) => row.kind === kind).map(({ id, name }) => ({ id, name }));
    return { stands: of('stand'), taxa: of('taxon'), recipes: of('recipe'), seasons: of('season').map(({ id, name }) => ({ year: Number(id), name })) };
  }
}
