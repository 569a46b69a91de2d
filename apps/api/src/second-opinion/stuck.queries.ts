import { Injectable } from '@nestjs/common';
import type { StickingLine } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { AS_CORRECTED } from '../due/due-days.queries.ts';

/** What was stuck into one tray, as it stands after corrections. Null: nobody told. */
export interface StuckRow extends Record<string, unknown> {
  readonly donorId: string | null;
  readonly donorLabel: string | null;
  readonly standId: string | null;
  readonly stand: string | null;
  readonly taxonId: string;
  readonly taxon: string;
  readonly scientificName: string;
  readonly stuckOn: string;
  readonly line: { readonly [K in Exclude<keyof StickingLine, 'donorId' | 'donorLabel'>]: StickingLine[K] | null };
}

/** How the donors of some trees stand otherwise. */
export interface AroundRow extends Record<string, unknown> {
  readonly standId: string;
  readonly taxonId: string;
  /** Donor trees of the stand with living plants, and in which houses. */
  readonly living: readonly { readonly donorId: string; readonly houses: readonly string[] }[];
  /** What the newest plan for the stand wants. */
  readonly wanted: number | null;
}

/** Of a sticking, or of all bundles of a trip. */
const WHICH = {
  sticking: 's.id = $2',
  trip: 's.bundle_id IN (SELECT id FROM bundle WHERE programme_id = $1 AND trip_id = $2)',
} as const;

const UP = (from: string) => `
  up AS (
    SELECT DISTINCT place_id AS start, place_id AS id, 0 AS depth FROM ${from}
    UNION ALL
    SELECT up.start, p.parent_id, up.depth + 1 FROM up JOIN place p ON p.programme_id = $1 AND p.id = up.id WHERE p.parent_id IS NOT NULL)`;

@Injectable()
export class StuckQueries {
  /** One row a tray, in the order stuck. A sticking without a day cannot be judged by one. */
  async lines(sql: UnitOfWork, programmeId: string, which: keyof typeof WHICH, id: string): Promise<StuckRow[]> {
    return sql.rows<StuckRow>(
      `WITH RECURSIVE tray AS (
         SELECT s.id AS sticking_id, s.donor_tree_id, s.taxon_id, s.bundle_id, s.recipe_version_id, s.stuck_on, b.opening_place_id AS place_id, b.medium, b.opening_entry_id, b.id
         FROM sticking s JOIN batch b ON b.programme_id = $1 AND b.sticking_id = s.id AND b.stage = 'cutting' AND b.parent_id IS NULL
         WHERE s.programme_id = $1 AND ${WHICH[which]} AND s.stuck_on IS NOT NULL),
       ${UP('tray')}
       SELECT coalesce(d.clone_group_id, d.id) AS "donorId", d.label AS "donorLabel", st.id AS "standId", st.name AS stand,
         x.id AS "taxonId", coalesce(x.common_name, x.scientific_name) AS taxon, x.scientific_name AS "scientificName", y.stuck_on AS "stuckOn",
         json_build_object(
           'ageYears', d.estimated_age_years, 'ageClass', d.age_class, 'cuttings', stuck.n, 'lengthCm', u.length_cm, 'wood', said ->> 'wood',
           'medium', coalesce(y.medium, (SELECT f.medium FROM tray_filling f WHERE f.programme_id = $1 AND f.place_id = y.place_id AND f.filled_on <= y.stuck_on ORDER BY f.filled_on DESC, f.id DESC LIMIT 1), v.medium),
           'hormonePpm', v.hormone_ppm, 'hormoneForm', v.hormone_form, 'recipeId', v.id, 'trayId', y.place_id,
           'benchId', (SELECT id FROM up WHERE start = y.place_id AND depth = 1),
           'houseId', (SELECT id FROM up WHERE start = y.place_id ORDER BY depth DESC LIMIT 1),
           'lightHours', (SELECT r.light_hours FROM up JOIN regime r ON r.programme_id = $1 AND r.place_id = up.id AND r.from_day <= y.stuck_on
             WHERE up.start = y.place_id ORDER BY up.depth, r.from_day DESC LIMIT 1),
           'strippedAround', coalesce((said ->> 'strippedAround')::int, (
             SELECT sum((g.one ->> 'n')::int)::int FROM jsonb_array_elements(said -> 'damaged') g (one) WHERE g.one ->> 'how' ~* 'girdl|ringed|all (a)?round'))) AS line
       FROM tray y
       CROSS JOIN LATERAL (SELECT sum(m.n)::int AS n FROM movement m WHERE m.programme_id = $1 AND m.batch_id = y.id AND m.effect = 'stuck') stuck
       JOIN entry e ON e.programme_id = $1 AND e.id = y.opening_entry_id ${AS_CORRECTED}
       JOIN taxon x ON x.programme_id = $1 AND x.id = y.taxon_id
       LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = y.donor_tree_id
       LEFT JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id
       LEFT JOIN bundle u ON u.programme_id = $1 AND u.id = y.bundle_id
       LEFT JOIN recipe_version v ON v.programme_id = $1 AND v.id = y.recipe_version_id
       WHERE stuck.n > 0
       ORDER BY y.stuck_on, st.name, x.scientific_name, d.label, y.id`,
      [programmeId, id],
    );
  }

  async isThere(sql: UnitOfWork, programmeId: string, which: keyof typeof WHICH, id: string): Promise<boolean> {
    return (await sql.maybe(`SELECT id FROM ${which} WHERE programme_id = $1 AND id = $2`, [programmeId, id])) !== undefined;
  }

  /** Of each stand and species: its donor trees with living plants and their houses, and how many trees the newest plan wants. */
  async around(sql: UnitOfWork, programmeId: string, stands: readonly { readonly standId: string; readonly taxonId: string }[]): Promise<AroundRow[]> {
    return sql.rows<AroundRow>(
      `WITH RECURSIVE asked AS (SELECT * FROM unnest($2::uuid[], $3::uuid[]) a (stand_id, taxon_id)),
       standing AS (
         SELECT a.stand_id, a.taxon_id, coalesce(d.clone_group_id, d.id) AS donor, x.place_id
         FROM asked a JOIN donor_tree d ON d.programme_id = $1 AND d.stand_id = a.stand_id AND d.taxon_id = a.taxon_id
         JOIN sticking s ON s.programme_id = $1 AND s.donor_tree_id = d.id
         JOIN batch b ON b.programme_id = $1 AND b.sticking_id = s.id
         JOIN batch_state x ON x.programme_id = $1 AND x.batch_id = b.id AND x.balance > 0),
       ${UP('standing')},
       top AS (SELECT DISTINCT ON (start) start, id FROM up ORDER BY start, depth DESC),
       living AS (
         SELECT s.stand_id, s.taxon_id, s.donor, json_agg(DISTINCT top.id) AS houses FROM standing s JOIN top ON top.start = s.place_id GROUP BY 1, 2, 3)
       SELECT a.stand_id AS "standId", a.taxon_id AS "taxonId",
         (SELECT coalesce(json_agg(json_build_object('donorId', l.donor, 'houses', l.houses)), '[]') FROM living l WHERE l.stand_id = a.stand_id AND l.taxon_id = a.taxon_id) AS living,
         (SELECT t.donors FROM plan_target t JOIN plan p ON p.programme_id = $1 AND p.id = t.plan_id
           WHERE t.programme_id = $1 AND t.stand_id = a.stand_id AND t.taxon_id = a.taxon_id ORDER BY p.season DESC, t.written_at DESC LIMIT 1) AS wanted
       FROM asked a`,
      [programmeId, stands.map(({ standId }) => standId), stands.map(({ taxonId }) => taxonId)],
    );
  }
}
