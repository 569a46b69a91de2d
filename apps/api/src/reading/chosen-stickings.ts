import type { FunnelQuery, ReadingFilter } from '@sprigline/contract';

export interface Chosen {
  /** A query answering `sticking_id, donor, stand_id, key, name`. */
  readonly text: string;
  readonly values: readonly unknown[];
}

/** First year of the season in which a sticking was stuck. `$SEASON` is the programme's first month. */
const SEASON_YEAR = `extract(year FROM s.stuck_on - make_interval(months => p.season_starts_in - 1))::int`;

/** `2024/25`; where seasons begin in January, `2024`. */
export const SEASON_NAME = `CASE WHEN p.season_starts_in = 1 THEN (${SEASON_YEAR})::text
  ELSE (${SEASON_YEAR})::text || '/' || lpad(((${SEASON_YEAR} + 1) % 100)::text, 2, '0') END`;

const GROUPS = {
  all: { key: `'all'`, name: `''` },
  stand: { key: 'd.stand_id::text', name: 'st.name' },
  taxon: { key: 's.taxon_id::text', name: 't.scientific_name' },
  season: { key: `(${SEASON_YEAR})::text`, name: SEASON_NAME },
  recipe: { key: 'r.id::text', name: 'r.name' },
  donor: { key: 'd.id::text', name: 'd.label' },
  ageClass: { key: 'd.age_class', name: 'd.age_class' },
} as const;

const CONDITIONS: Readonly<Record<keyof ReadingFilter, (value: string) => string>> = {
  standId: (value) => `d.stand_id = ${value}`,
  taxonId: (value) => `s.taxon_id = ${value}`,
  donorTreeId: (value) => `s.donor_tree_id = ${value}`,
  recipeId: (value) => `r.id = ${value}`,
  ageClass: (value) => `d.age_class = ${value}`,
  season: (value) => `${SEASON_YEAR} = ${value}`,
  placeId: (value) => `EXISTS (
    SELECT FROM batch b JOIN batch_state x ON x.programme_id = b.programme_id AND x.batch_id = b.id
    WHERE b.programme_id = s.programme_id AND b.sticking_id = s.id AND x.balance > 0 AND x.place_id IN (
      WITH RECURSIVE inside AS (
        SELECT id FROM place WHERE programme_id = $1 AND id = ${value}
        UNION ALL SELECT c.id FROM place c JOIN inside ON c.programme_id = $1 AND c.parent_id = inside.id)
      SELECT id FROM inside))`,
};

/** The stickings that a reading is of. The programme is `$1`; filters follow as further parameters. */
export function chosenStickings(programmeId: string, { by, ...filter }: FunnelQuery): Chosen {
  const values: unknown[] = [programmeId];
  const conditions = (Object.keys(CONDITIONS) as (keyof ReadingFilter)[])
    .filter((name) => filter[name] !== undefined)
    .map((name) => CONDITIONS[name](`$${values.push(filter[name])}`));
  const { key, name } = GROUPS[by];
  return {
    values,
    text: `
      SELECT s.id AS sticking_id, coalesce(d.clone_group_id, d.id) AS donor, d.stand_id,
             coalesce(${key}, '') AS key, coalesce(${name}, '') AS name
      FROM sticking s
      JOIN programme p ON p.id = s.programme_id
      JOIN taxon t ON t.programme_id = s.programme_id AND t.id = s.taxon_id
      LEFT JOIN donor_tree d ON d.programme_id = s.programme_id AND d.id = s.donor_tree_id
      LEFT JOIN stand st ON st.programme_id = d.programme_id AND st.id = d.stand_id
      LEFT JOIN recipe_version v ON v.programme_id = s.programme_id AND v.id = s.recipe_version_id
      LEFT JOIN recipe r ON r.programme_id = v.programme_id AND r.id = v.recipe_id
      WHERE ${['s.programme_id = $1', ...conditions].join(' AND ')}`,
  };
}
