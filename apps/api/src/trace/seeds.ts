import type { Traced, TraceQuery } from '@sprigline/contract';

/** Where each place lay from day to day: trays are carried elsewhere with all they hold. */
const LAY_IN = `
  lay_in AS (
    SELECT p.id, p.parent_id, '-infinity'::date AS from_day, 'infinity'::date AS until_day FROM place p
    WHERE p.programme_id = $1 AND NOT EXISTS (SELECT FROM place_move m WHERE m.programme_id = $1 AND m.place_id = p.id)
    UNION ALL
    (SELECT DISTINCT ON (m.place_id) m.place_id, m.from_parent_id, '-infinity'::date, m.moved_on FROM place_move m
     WHERE m.programme_id = $1 ORDER BY m.place_id, m.moved_on, m.id)
    UNION ALL
    SELECT m.place_id, m.to_parent_id, m.moved_on,
      coalesce(lead(m.moved_on) OVER (PARTITION BY m.place_id ORDER BY m.moved_on, m.id), 'infinity') FROM place_move m WHERE m.programme_id = $1)`;

/** Batches of some stickings that began there, and did not come out of another batch of the same sticking. */
const BEGAN = (stickings: string): string => `
  SELECT b.id, '-infinity'::date AS since, 'infinity'::date AS until, k.perhaps FROM (${stickings}) k
  JOIN batch b ON b.programme_id = $1 AND b.sticking_id = k.id
  LEFT JOIN batch up ON up.programme_id = $1 AND up.id = b.parent_id
  WHERE up.id IS NULL OR up.sticking_id IS DISTINCT FROM b.sticking_id`;

/** What stood in the given fillings: those who left on the day of filling stood in the one before. */
const STOOD_IN_FILLINGS = `
  SELECT y.batch_id AS id, greatest(y.from_day, f.filled_on) AS since, least(coalesce(y.to_day, 'infinity'), f.next_on) AS until, false AS perhaps
  FROM fillings f JOIN stay y ON y.programme_id = $1 AND y.place_id = f.place_id
  WHERE y.from_day < f.next_on AND (y.to_day IS NULL OR y.to_day > f.filled_on OR y.from_day >= f.filled_on)`;

const FILLINGS = (which: string): string => `
  fillings AS (
    SELECT f.place_id, f.filled_on, coalesce((
      SELECT min(n.filled_on) FROM tray_filling n WHERE n.programme_id = $1 AND n.place_id = f.place_id AND n.filled_on > f.filled_on), 'infinity') AS next_on
    FROM tray_filling f WHERE f.programme_id = $1 AND ${which})`;

interface Seeds {
  /** CTEs before `seed`, without commas at the ends. */
  readonly before: readonly string[];
  /** Answers `id, since, until, perhaps`: plants of that batch count from and until these days. */
  readonly select: string;
}

/** $2 is what is asked about; $3 and $4 are the days of a place. */
const SEEDS: Readonly<Record<Traced, Seeds>> = {
  batchId: { before: [], select: `SELECT id, '-infinity'::date AS since, 'infinity'::date AS until, false AS perhaps FROM batch WHERE programme_id = $1 AND id = $2::uuid` },
  placeId: {
    before: [LAY_IN, `
  inside AS (
    SELECT $2::uuid AS id, coalesce($3::date, '-infinity') AS from_day, coalesce($4::date, 'infinity') AS until_day
    UNION
    SELECT l.id, greatest(l.from_day, i.from_day), least(l.until_day, i.until_day) FROM inside i JOIN lay_in l ON l.parent_id = i.id
    WHERE l.from_day <= i.until_day AND l.until_day >= i.from_day)`],
    select: `
  SELECT y.batch_id AS id, greatest(y.from_day, i.from_day) AS since, least(coalesce(y.to_day, 'infinity'), i.until_day) AS until, false AS perhaps
  FROM inside i JOIN stay y ON y.programme_id = $1 AND y.place_id = i.id
  WHERE y.from_day <= i.until_day AND coalesce(y.to_day, 'infinity') >= i.from_day`,
  },
  fillingId: { before: [FILLINGS('f.id = $2::uuid')], select: STOOD_IN_FILLINGS },
  mediumLot: {
    before: [FILLINGS('lower(f.medium_lot) = lower($2)')],
    select: `${STOOD_IN_FILLINGS}
  UNION ALL
  SELECT id, '-infinity', 'infinity', false FROM batch WHERE programme_id = $1 AND lower(medium) = lower($2)`,
  },
  donorTreeId: {
    before: [],
    select: BEGAN(`
    SELECT id, false AS perhaps FROM sticking WHERE programme_id = $1 AND donor_tree_id = $2::uuid
    UNION ALL
    SELECT s.id, true FROM sticking_candidate c JOIN sticking s ON s.programme_id = $1 AND s.id = c.sticking_id AND s.donor_tree_id IS NULL
    WHERE c.programme_id = $1 AND c.donor_tree_id = $2::uuid`),
  },
  tripId: {
    before: [],
    select: BEGAN(`
    SELECT s.id, false AS perhaps FROM bundle u JOIN sticking s ON s.programme_id = $1 AND s.bundle_id = u.id WHERE u.programme_id = $1 AND u.trip_id = $2::uuid`),
  },
};

export interface Subject {
  readonly kind: Traced;
  readonly id: string;
}

/** The one thing that is asked about. */
export function subjectOf(asked: TraceQuery): Subject {
  const kind = (Object.keys(SEEDS) as Traced[]).find((name) => asked[name] !== undefined);
  if (kind === undefined) throw new Error('the contract lets no trace of nothing through');
  return { kind, id: asked[kind] ?? '' };
}

export const seedsOf = ({ kind }: Subject): Seeds => SEEDS[kind];
