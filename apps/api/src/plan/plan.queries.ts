import { Injectable } from '@nestjs/common';
import type { NewPlan, Plan, PlanAnswer, PlanContent, PlanInList, PlanQuery, PlanTargetContent } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';
import { seasonName } from '../reading/chosen-stickings.queries.ts';

const SEASON_NAME = seasonName('p.season', 'g');

const TARGETS = `(SELECT coalesce(json_agg(json_build_object(
    'id', t.id, 'standId', t.stand_id, 'taxonId', t.taxon_id, 'siteId', t.site_id, 'stage', t.stage, 'plants', t.plants, 'donors', t.donors, 'confidence', t.confidence,
    'mostTrees', t.most_trees, 'stickOn', t.stick_on, 'recipeVersionId', t.recipe_version_id, 'otherRecipeVersionId', t.other_recipe_version_id, 'lengthCm', t.length_cm,
    'wood', t.wood, 'lightHours', t.light_hours, 'placesPerDonor', t.places_per_donor, 'figuresOn', t.figures_on, 'answer', t.answer,
    'stand', json_build_object('id', st.id, 'name', st.name), 'taxon', json_build_object('id', x.id, 'name', coalesce(x.common_name, x.scientific_name)),
    'site', CASE WHEN w.id IS NOT NULL THEN json_build_object('id', w.id, 'name', w.name) END,
    'recipe', one.name, 'otherRecipe', other.name) ORDER BY st.name, x.scientific_name, t.id), '[]')
  FROM plan_target t
  JOIN stand st ON st.programme_id = $1 AND st.id = t.stand_id JOIN taxon x ON x.programme_id = $1 AND x.id = t.taxon_id
  LEFT JOIN place w ON w.programme_id = $1 AND w.id = t.site_id
  LEFT JOIN LATERAL (SELECT r.name || ' (' || v.version || ')' AS name FROM recipe_version v JOIN recipe r ON r.programme_id = $1 AND r.id = v.recipe_id WHERE v.programme_id = $1 AND v.id = t.recipe_version_id) one ON true
  LEFT JOIN LATERAL (SELECT r.name || ' (' || v.version || ')' AS name FROM recipe_version v JOIN recipe r ON r.programme_id = $1 AND r.id = v.recipe_id WHERE v.programme_id = $1 AND v.id = t.other_recipe_version_id) other ON true
  WHERE t.programme_id = $1 AND t.plan_id = p.id)`;

type PlanLine = PlanInList & { readonly season: number; readonly madeAt: Date } & Record<string, unknown>;
type PlanRow = Omit<Plan, 'madeAt'> & { readonly madeAt: Date } & Record<string, unknown>;

const COLUMNS = ['stand_id', 'taxon_id', 'site_id', 'stage', 'plants', 'donors', 'confidence', 'most_trees', 'stick_on', 'recipe_version_id', 'other_recipe_version_id', 'length_cm', 'wood', 'light_hours', 'places_per_donor', 'answer', 'figures_on'] as const;

@Injectable()
export class PlanQueries {
  /** Newest season first. */
  async list(sql: UnitOfWork, programmeId: string, { after, limit }: PlanQuery): Promise<Part<PlanInList>> {
    const [season = null, madeAt = null, id = null] = keysAfter(after, 3) ?? [];
    const rows = await sql.rows<PlanLine>(
      `SELECT p.id, p.name, p.season, p.made_at AS "madeAt", ${SEASON_NAME} AS "seasonName", t.targets, t.plants, t.cuttings
       FROM plan p JOIN programme g ON g.id = p.programme_id
       CROSS JOIN LATERAL (
         SELECT count(*)::int AS targets, coalesce(sum(t.plants), 0)::int AS plants, coalesce(sum((t.answer #>> '{bets,asPlanned,cuttings}')::int), 0)::int AS cuttings
         FROM plan_target t WHERE t.programme_id = $1 AND t.plan_id = p.id) t
       WHERE p.programme_id = $1 AND ($2::smallint IS NULL OR (p.season, p.made_at, p.id) < ($2::smallint, $3::timestamptz, $4::uuid))
       ORDER BY p.season DESC, p.made_at DESC, p.id DESC LIMIT $5`,
      [programmeId, season, madeAt, id, limit + 1],
    );
    return partOf(rows, limit, ({ season, madeAt, id }) => [String(season), madeAt.toISOString(), id]);
  }

  async one(sql: UnitOfWork, programmeId: string, id: string): Promise<Plan | undefined> {
    const row = await sql.maybe<PlanRow>(
      `SELECT p.id, p.name, p.season, p.note, ${SEASON_NAME} AS "seasonName", m.name AS "madeBy", p.made_at AS "madeAt", ${TARGETS} AS targets
       FROM plan p JOIN programme g ON g.id = p.programme_id JOIN person m ON m.programme_id = $1 AND m.id = p.made_by WHERE p.programme_id = $1 AND p.id = $2`,
      [programmeId, id],
    );
    return row && { ...row, madeAt: row.madeAt.toISOString() };
  }

  async insert(sql: UnitOfWork, programmeId: string, madeBy: string, { id, name, season, note }: NewPlan): Promise<void> {
    await sql.rows('INSERT INTO plan (programme_id, id, name, season, note, made_by) VALUES ($1, $2, $3, $4, $5, $6)', [programmeId, id, name, season, note, madeBy]);
  }

  async update(sql: UnitOfWork, programmeId: string, id: string, { name, season, note }: PlanContent): Promise<void> {
    await sql.rows('UPDATE plan SET name = $3, season = $4, note = $5 WHERE programme_id = $1 AND id = $2', [programmeId, id, name, season, note]);
  }

  async insertTarget(sql: UnitOfWork, programmeId: string, planId: string, id: string, row: TargetRow): Promise<void> {
    await sql.rows(
      `INSERT INTO plan_target (programme_id, plan_id, id, ${COLUMNS.join(', ')}) VALUES ($1, $2, $3, ${COLUMNS.map((_, at) => `$${at + 4}`).join(', ')})`,
      [programmeId, planId, id, ...valuesOf(row)],
    );
  }

  async updateTarget(sql: UnitOfWork, programmeId: string, id: string, row: TargetRow): Promise<void> {
    await sql.rows(
      `UPDATE plan_target SET ${COLUMNS.map((column, at) => `${column} = $${at + 3}`).join(', ')}, written_at = present_time() WHERE programme_id = $1 AND id = $2`,
      [programmeId, id, ...valuesOf(row)],
    );
  }

  async removeTarget(sql: UnitOfWork, programmeId: string, planId: string, id: string): Promise<boolean> {
    return (await sql.maybe('DELETE FROM plan_target WHERE programme_id = $1 AND plan_id = $2 AND id = $3 RETURNING id', [programmeId, planId, id])) !== undefined;
  }
}

export interface TargetRow extends PlanTargetContent {
  readonly answer: PlanAnswer;
  readonly figuresOn: string;
}

const valuesOf = (row: TargetRow): unknown[] => [
  row.standId, row.taxonId, row.siteId, row.stage, row.plants, row.donors, row.confidence, row.mostTrees, row.stickOn, row.recipeVersionId, row.otherRecipeVersionId,
  row.lengthCm, row.wood, row.lightHours, row.placesPerDonor, JSON.stringify(row.answer), row.figuresOn,
];
