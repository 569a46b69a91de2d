import { Injectable } from '@nestjs/common';
import type { ComparedGroup, ComparisonQuery, ReadingFilter } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { chosenStickings, WHERE_STUCK } from '../reading/chosen-stickings.queries.ts';
import { ARMS } from './arms.ts';

/** Cuttings that share their arm and all else that is known of them. Null: not told. */
export interface ComparedRow extends Record<string, unknown> {
  readonly key: string | null;
  readonly name: string | null;
  readonly hormone: ComparedGroup['hormone'];
  readonly isSecondTry: boolean;
  readonly donor: string | null;
  readonly tray: string | null;
  readonly bench: string | null;
  readonly day: string | null;
  readonly team: string | null;
  readonly recipe: string | null;
  readonly stand: string | null;
  readonly species: string;
  readonly also: string | null;
  readonly cuttings: number;
  readonly rooted: number;
  readonly lost: number;
  readonly undecided: number;
}

interface TreeRow extends Record<string, unknown> {
  readonly label: string;
}

@Injectable()
export class ComparisonQueries {
  /** What became of the chosen cuttings, summed up by all that a comparison asks. Of nobody who stuck them anything leaves the process. */
  async rows(sql: UnitOfWork, programmeId: string, { by, allowFor, against: _, ...filter }: ComparisonQuery): Promise<ComparedRow[]> {
    const { text, values } = chosenStickings(programmeId, { ...filter, by: 'all' });
    const { key, name, recipe } = ARMS[by];
    return sql.rows<ComparedRow>(
      `WITH chosen AS MATERIALIZED (${text})
       SELECT ${key} AS key, min(${name}) AS name,
         ${by === 'hormone' ? `min(CASE WHEN v.hormone IS NOT NULL THEN jsonb_build_object('name', v.hormone, 'ppm', nullif(v.hormone_ppm, 0), 'form', v.hormone_form)::text END)::jsonb` : 'NULL'} AS hormone,
         s.second_try_of_id IS NOT NULL AS "isSecondTry", c.donor, coalesce(f.id, stuck_in.id) AS tray, bench.id AS bench, s.stuck_on AS day,
         coalesce(e.seen_by, CASE WHEN e.door <> 'import' THEN e.written_by END) AS team, ${recipe} AS recipe, c.stand_id AS stand, s.taxon_id AS species,
         ${allowFor === undefined ? 'NULL' : ARMS[allowFor].key} AS also,
         sum(y.came_in)::int AS cuttings, sum(y.gone_on)::int AS rooted, sum(y.died + y.unaccounted + y.not_rooted + y.thrown_out)::int AS lost, sum(y.here)::int AS undecided
       FROM chosen c
       JOIN sticking s ON s.programme_id = $1 AND s.id = c.sticking_id
       JOIN tally y ON y.programme_id = $1 AND y.sticking_id = s.id AND y.stage = 'cutting'
       JOIN programme p ON p.id = $1
       JOIN taxon t ON t.programme_id = $1 AND t.id = s.taxon_id
       LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = s.donor_tree_id
       LEFT JOIN stand st ON st.programme_id = $1 AND st.id = c.stand_id
       LEFT JOIN recipe_version v ON v.programme_id = $1 AND v.id = s.recipe_version_id
       LEFT JOIN recipe r ON r.programme_id = $1 AND r.id = v.recipe_id
       LEFT JOIN entry e ON e.programme_id = $1 AND e.id = s.opening_entry_id${WHERE_STUCK}
       GROUP BY 1, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13 ORDER BY 1, 8, 5, 6`,
      values,
    );
  }

  /** Donor trees that stand, of the stands of these stickings and the species stuck most, one of each clone; those with cuttings in them first. */
  async treesFor(sql: UnitOfWork, programmeId: string, filter: ReadingFilter, most: number): Promise<string[]> {
    const { text, values } = chosenStickings(programmeId, { ...filter, by: 'all' });
    const rows = await sql.rows<TreeRow>(
      `WITH chosen AS MATERIALIZED (${text}), kinds AS (
         -- Of one species only, the one stuck most: two would be a trial of their own.
         SELECT DISTINCT stand_id, taxon_id FROM chosen
         WHERE stand_id IS NOT NULL AND taxon_id = (SELECT taxon_id FROM chosen GROUP BY taxon_id ORDER BY count(*) DESC, taxon_id LIMIT 1))
       SELECT label FROM (
         SELECT DISTINCT ON (coalesce(d.clone_group_id, d.id)) d.label, coalesce(d.clone_group_id, d.id) IN (SELECT donor FROM chosen) AS is_used
         FROM donor_tree d JOIN kinds k ON k.stand_id = d.stand_id AND k.taxon_id = d.taxon_id
         WHERE d.programme_id = $1 AND d.state = 'standing' ORDER BY coalesce(d.clone_group_id, d.id), d.label) trees
       ORDER BY is_used DESC, label LIMIT ${most}`,
      values,
    );
    return rows.map(({ label }) => label).sort((one, other) => one.localeCompare(other, 'en'));
  }
}
