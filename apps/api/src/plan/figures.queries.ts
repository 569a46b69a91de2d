import { Injectable } from '@nestjs/common';
import type { PlanTargetContent } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';

export interface TreeRow {
  readonly donorId: string;
  readonly treeId: string;
  readonly label: string;
  readonly ageYears: number | null;
  readonly ageClass: 'juvenile' | 'young' | 'mature' | 'old' | null;
  readonly cutOn: string | null;
  readonly isCutLately: boolean;
  readonly plantsHere: number;
}

export interface RecipeRow {
  readonly id: string;
  readonly medium: string | null;
  readonly hormonePpm: number | null;
  readonly hormoneForm: string | null;
}

/** What a target is worked out from, besides how cuttings of the species rooted. */
export interface Figures extends Record<string, unknown> {
  readonly today: string;
  readonly scientificName: string | null;
  /** Those that can be cut: first the ones not cut for two years, of these the ones with fewest plants. */
  readonly trees: readonly TreeRow[];
  /** Donor trees of the stand with living plants, cut from again or not. */
  readonly living: readonly string[];
  readonly stages: readonly { readonly stage: 'liner' | 'potted'; readonly goneOn: number; readonly settled: number }[];
  readonly recipes: readonly RecipeRow[];
}

const ALL = (select: string) => `(SELECT coalesce(json_agg(x), '[]') FROM (${select}) x)`;

@Injectable()
export class FiguresQueries {
  async of(sql: UnitOfWork, programmeId: string, { standId, taxonId, stickOn, recipeVersionId, otherRecipeVersionId }: PlanTargetContent): Promise<Figures> {
    return sql.one<Figures>(
      `WITH tree AS (
         SELECT coalesce(clone_group_id, id) AS donor, id, label, estimated_age_years, age_class, state FROM donor_tree
         WHERE programme_id = $1 AND stand_id = $2 AND taxon_id = $3),
       plants AS (
         SELECT tree.donor, sum(x.balance)::int AS n FROM tree JOIN sticking s ON s.programme_id = $1 AND s.donor_tree_id = tree.id
         JOIN batch b ON b.programme_id = $1 AND b.sticking_id = s.id JOIN batch_state x ON x.programme_id = $1 AND x.batch_id = b.id AND x.balance > 0 GROUP BY 1),
       cut AS (
         SELECT tree.donor, max(t.went_on) AS on_day FROM tree JOIN bundle b ON b.programme_id = $1 AND b.donor_tree_id = tree.id
         JOIN trip t ON t.programme_id = $1 AND t.id = b.trip_id GROUP BY 1),
       one AS (
         SELECT DISTINCT ON (tree.donor) tree.donor AS "donorId", tree.id AS "treeId", tree.label, tree.estimated_age_years AS "ageYears", tree.age_class AS "ageClass",
           cut.on_day AS "cutOn", coalesce(cut.on_day > coalesce($4::date, present_day(p.zone)) - interval '2 years', false) AS "isCutLately", coalesce(plants.n, 0) AS "plantsHere"
         FROM tree JOIN programme p ON p.id = $1 LEFT JOIN plants ON plants.donor = tree.donor LEFT JOIN cut ON cut.donor = tree.donor
         WHERE tree.state IN ('standing', 'unknown') ORDER BY tree.donor, tree.label)
       SELECT present_day(zone) AS today, (SELECT scientific_name FROM taxon WHERE programme_id = $1 AND id = $3) AS "scientificName",
         ${ALL('SELECT * FROM one ORDER BY "isCutLately", "plantsHere", label')} AS trees,
         (SELECT coalesce(json_agg(donor), '[]') FROM plants) AS living,
         ${ALL(`SELECT t.stage, sum(t.gone_on)::int AS "goneOn", sum(t.gone_on + t.died + t.unaccounted + t.not_rooted + t.thrown_out)::int AS settled
           FROM sticking s JOIN tally t ON t.programme_id = $1 AND t.sticking_id = s.id AND t.stage IN ('liner', 'potted') WHERE s.programme_id = $1 AND s.taxon_id = $3 GROUP BY 1`)} AS stages,
         ${ALL('SELECT id, medium, hormone_ppm AS "hormonePpm", hormone_form AS "hormoneForm" FROM recipe_version WHERE programme_id = $1 AND id = ANY ($5::uuid[])')} AS recipes
       FROM programme WHERE id = $1`,
      [programmeId, standId, taxonId, stickOn, [recipeVersionId, otherRecipeVersionId].filter((id) => id !== null)],
    );
  }
}
