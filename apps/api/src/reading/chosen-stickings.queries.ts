import type { CurveBy, ReadingFilter } from '@sprigline/contract';

export interface Chosen {
  /** A query answering `sticking_id, donor, stand_id, taxon_id, stuck_on, key, name`. */
  readonly text: string;
  readonly values: readonly unknown[];
}

/** First year of the season in which a sticking was stuck. */
export const SEASON_YEAR = `extract(year FROM s.stuck_on - make_interval(months => p.season_starts_in - 1))::int`;

/** `2024/25`; where seasons begin in January, `2024`. */
export const seasonName = (year: string, programme: string): string => `CASE WHEN ${programme}.season_starts_in = 1 THEN (${year})::text
  ELSE (${year})::text || '/' || lpad(((${year} + 1) % 100)::text, 2, '0') END`;

/** Of the season in which a sticking was stuck. */
export const SEASON_NAME = seasonName(SEASON_YEAR, 'p');

/** All seasons in which something was stuck; days first, since they are few. The programme is `$1`. */
export const SEASONS = `SELECT DISTINCT ${SEASON_YEAR} AS year, ${SEASON_NAME} AS name
  FROM (SELECT DISTINCT stuck_on FROM sticking WHERE programme_id = $1 AND stuck_on IS NOT NULL) s JOIN programme p ON p.id = $1`;

/** What recipes are made of, told of a version `v`: what is the same within a group, null where it is not told, and its name. */
export const RECIPE_PARTS = {
  hormone: {
    key: `CASE WHEN v.id IS NULL THEN NULL WHEN v.hormone IS NULL THEN 'none' ELSE lower(concat_ws(' ', v.hormone, v.hormone_ppm, v.hormone_form)) END`,
    name: `concat_ws(' ', v.hormone, nullif(v.hormone_ppm, 0) || ' ppm')`,
  },
  medium: { key: 'lower(v.medium)', name: 'v.medium' },
  wound: { key: `CASE WHEN v.id IS NULL THEN NULL ELSE coalesce(lower(v.wound), 'none') END`, name: 'v.wound' },
} as const;

/** The bench that a sticking was stuck on; needs `WHERE_STUCK`. */
export const BENCH = { key: 'bench.id::text', name: `concat_ws(' › ', house.name, bench.name)` } as const;

const GROUPS = {
  all: { key: `'all'`, name: `''` },
  // Never two species in one funnel: the loss of either would not be seen.
  stand: { key: `st.id::text || '/' || s.taxon_id::text`, name: 'st.name' },
  taxon: { key: 's.taxon_id::text', name: 'coalesce(t.common_name, t.scientific_name)' },
  season: { key: `(${SEASON_YEAR})::text`, name: SEASON_NAME },
  recipe: { key: 'r.id::text', name: 'r.name' },
  donor: { key: 'coalesce(d.clone_group_id, d.id)::text', name: 'd.label' },
  ageClass: { key: 'd.age_class', name: 'd.age_class' },
  ...RECIPE_PARTS,
  place: BENCH,
} as const;

/** By id, so that the plan starts from the few that are meant, however large the programme is. */
const CONDITIONS: Readonly<Record<keyof ReadingFilter, (value: string) => string>> = {
  // Of those whose donor is unknown, the ones that can only be of this stand.
  standId: (value) => `s.id IN (
    SELECT x.id FROM donor_tree y JOIN sticking x ON x.programme_id = $1 AND x.donor_tree_id = y.id
    WHERE y.programme_id = $1 AND y.stand_id = ${value}
    UNION ALL
    SELECT x.id FROM donor_tree y JOIN sticking_candidate c ON c.programme_id = $1 AND c.donor_tree_id = y.id
    JOIN sticking x ON x.programme_id = $1 AND x.id = c.sticking_id AND x.donor_tree_id IS NULL
    WHERE y.programme_id = $1 AND y.stand_id = ${value} AND NOT EXISTS (
      SELECT FROM sticking_candidate o JOIN donor_tree z ON z.programme_id = $1 AND z.id = o.donor_tree_id AND z.stand_id <> ${value}
      WHERE o.programme_id = $1 AND o.sticking_id = x.id))`,
  taxonId: (value) => `s.taxon_id = ${value}`,
  donorTreeId: (value) => `s.donor_tree_id = ${value}`,
  recipeId: (value) => `s.recipe_version_id IN (SELECT id FROM recipe_version WHERE programme_id = $1 AND recipe_id = ${value})`,
  ageClass: (value) => `d.age_class = ${value}`,
  season: (value) => `${SEASON_YEAR} = ${value}`,
  placeId: (value) => `s.id IN (
    WITH RECURSIVE inside AS (
      SELECT id FROM place WHERE programme_id = $1 AND id = ${value}
      UNION ALL SELECT c.id FROM place c JOIN inside ON c.programme_id = $1 AND c.parent_id = inside.id)
    SELECT b.sticking_id FROM inside JOIN batch_state x ON x.programme_id = $1 AND x.place_id = inside.id AND x.balance > 0
    JOIN batch b ON b.programme_id = $1 AND b.id = x.batch_id)`,
};

const RECIPE = `
      LEFT JOIN recipe_version v ON v.programme_id = s.programme_id AND v.id = s.recipe_version_id
      LEFT JOIN recipe r ON r.programme_id = v.programme_id AND r.id = v.recipe_id`;

const NEEDS_RECIPE: readonly CurveBy[] = ['recipe', 'hormone', 'medium', 'wound'];

/** The place in which a sticking was stuck, its tray as it was filled then, and the bench on which the tray stood then. */
export const WHERE_STUCK = `
       LEFT JOIN LATERAL (SELECT opening_place_id FROM batch WHERE programme_id = $1 AND sticking_id = s.id AND opening_entry_id = s.opening_entry_id LIMIT 1) b ON true
       LEFT JOIN place stuck_in ON stuck_in.programme_id = $1 AND stuck_in.id = b.opening_place_id
       LEFT JOIN LATERAL (
         SELECT id FROM tray_filling WHERE programme_id = $1 AND place_id = stuck_in.id AND filled_on <= s.stuck_on ORDER BY filled_on DESC, id LIMIT 1) f ON true
       LEFT JOIN LATERAL (
         SELECT id, from_parent_id FROM place_move WHERE programme_id = $1 AND place_id = stuck_in.id AND moved_on > s.stuck_on ORDER BY moved_on, id LIMIT 1) moved ON true
       LEFT JOIN place bench ON bench.programme_id = $1
         AND bench.id = CASE WHEN stuck_in.kind <> 'tray' THEN stuck_in.id WHEN moved.id IS NOT NULL THEN moved.from_parent_id ELSE stuck_in.parent_id END
       LEFT JOIN place house ON house.programme_id = $1 AND house.id = bench.parent_id`;

/** Where the donor is unknown, the stand is known if all that it may be stand there. */
const PERHAPS = (and: string, group: string): string => `
        SELECT ${group === '' ? '' : 'c.sticking_id, '}min(y.stand_id::text)::uuid AS stand_id FROM sticking_candidate c
        JOIN donor_tree y ON y.programme_id = $1 AND y.id = c.donor_tree_id
        WHERE c.programme_id = $1 ${and} ${group} HAVING count(DISTINCT y.stand_id) = 1`;

/** Asked once for all, which is quicker for many; or of each whose donor is unknown, so that a stand waits for no other. */
const PERHAPS_OF_MANY = `LEFT JOIN (${PERHAPS('', 'GROUP BY c.sticking_id')}) perhaps ON perhaps.sticking_id = s.id AND s.donor_tree_id IS NULL`;
const PERHAPS_OF_FEW = `LEFT JOIN LATERAL (${PERHAPS('AND c.sticking_id = s.id AND s.donor_tree_id IS NULL', '')}) perhaps ON true`;

/** The stickings that a reading is of. The programme is `$1`; filters follow as further parameters. */
export function chosenStickings(programmeId: string, { by, ...filter }: ReadingFilter & { readonly by: CurveBy }): Chosen {
  const values: unknown[] = [programmeId];
  const conditions = (Object.keys(CONDITIONS) as (keyof ReadingFilter)[])
    .filter((name) => filter[name] !== undefined)
    .map((name) => CONDITIONS[name](`$${values.push(filter[name])}`));
  const { key, name } = GROUPS[by];
  return {
    values,
    text: `
      SELECT s.id AS sticking_id, coalesce(d.clone_group_id, d.id) AS donor, st.id AS stand_id, s.taxon_id, s.stuck_on,
             coalesce(${key}, '') AS key, coalesce(${name}, '') AS name
      FROM sticking s
      ${by === 'season' || filter.season !== undefined ? 'JOIN programme p ON p.id = s.programme_id' : ''}
      ${by === 'taxon' ? 'JOIN taxon t ON t.programme_id = s.programme_id AND t.id = s.taxon_id' : ''}
      LEFT JOIN donor_tree d ON d.programme_id = s.programme_id AND d.id = s.donor_tree_id
      ${filter.standId === undefined && filter.donorTreeId === undefined ? PERHAPS_OF_MANY : PERHAPS_OF_FEW}
      LEFT JOIN stand st ON st.programme_id = s.programme_id AND st.id = coalesce(d.stand_id, perhaps.stand_id)${NEEDS_RECIPE.includes(by) ? RECIPE : ''}${by === 'place' ? WHERE_STUCK : ''}
      WHERE ${['s.programme_id = $1', ...conditions].join(' AND ')}`,
  };
}
