import { Injectable } from '@nestjs/common';
import type { StoodBeside, Trace, TracedBatch, TraceQuery } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { seedsOf, type Subject } from './seeds.ts';
import { WHEREABOUTS } from './standing.ts';
import { CAME_BEFORE, CAME_FROM, MOST_SEEDS, WALK, WAY } from './walk.ts';

/** Plants that an entry gave out of the programme, before it is known to whom. */
export interface Given extends Record<string, unknown> {
  readonly batchId: string;
  readonly label: string | null;
  readonly entryId: string;
  readonly n: number;
  readonly day: string;
}

interface Told extends Record<string, unknown> {
  readonly batches: TracedBatch[];
  readonly beside: StoodBeside[];
  readonly given: Given[];
  readonly donorTrees: Trace['donorTrees'];
  readonly trips: Trace['trips'];
  readonly sums: { readonly batches: number; readonly plants: number; readonly beside: number; readonly given: number };
}

export interface Followed extends Told {
  readonly sums: Told['sums'] & { readonly seeds: number };
}

const LABEL = (id: string): string => `(SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.batch_id = ${id} ORDER BY l.given_at DESC, l.code LIMIT 1)`;
const TREE = `CASE WHEN d.id IS NOT NULL THEN json_build_object('id', d.id, 'label', d.label) END`;

const LINEAGE = `
  LEFT JOIN sticking k ON k.programme_id = $1 AND k.id = b.sticking_id
  LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = k.donor_tree_id`;

const BATCHES = `
  SELECT b.id, ${LABEL('b.id')} AS label, ${WAY('shown.rank')} AS way, shown.perhaps, b.stage, ${TREE} AS "donorTree",
    CASE WHEN st.id IS NOT NULL THEN json_build_object('id', st.id, 'name', st.name) END AS stand, t.scientific_name AS taxon,
    shown.balance AS n, shown.held, CASE WHEN w.id IS NOT NULL THEN json_build_object('id', w.id, 'name', w.name) END AS place, coalesce(w.path, '{}') AS path,
    (SELECT max(y.from_day) FROM stay y WHERE y.programme_id = $1 AND y.batch_id = b.id) AS since, b.opened_on AS "openedOn", w.holder,
    ${CAME_FROM} AS "from"
  FROM shown JOIN batch b ON b.programme_id = $1 AND b.id = shown.id ${LINEAGE}
  LEFT JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id
  LEFT JOIN taxon t ON t.programme_id = $1 AND t.id = k.taxon_id
  LEFT JOIN whereabouts w ON w.id = shown.place_id
  ORDER BY shown.rank, b.opened_on, b.id`;

const BESIDE = `
  SELECT b.id, ${LABEL('b.id')} AS label, b.stage, ${TREE} AS "donorTree", n.balance AS n, n.held,
    json_build_object('id', w.id, 'name', w.name) AS place, w.path, n.from_day AS "from", n.until_day AS until,
    CASE WHEN h.id IS NOT NULL THEN json_build_object('id', h.id, 'name', h.name) END AS "nowAt", coalesce(h.path, '{}') AS "nowPath", h.holder
  FROM shown_beside n JOIN batch b ON b.programme_id = $1 AND b.id = n.id ${LINEAGE}
  JOIN whereabouts w ON w.id = n.place_id LEFT JOIN whereabouts h ON h.id = n.now_id
  ORDER BY n.from_day, b.id, n.place_id`;

const TREES = `
  SELECT x.id, d.label, st.name AS stand, x.perhaps FROM (
    SELECT id, bool_and(perhaps) AS perhaps FROM (
      SELECT k.donor_tree_id AS id, false AS perhaps FROM sources k WHERE k.donor_tree_id IS NOT NULL
      UNION ALL
      SELECT c.donor_tree_id, true FROM sources k JOIN sticking_candidate c ON c.programme_id = $1 AND c.sticking_id = k.id WHERE k.donor_tree_id IS NULL) every
    GROUP BY id) x
  JOIN donor_tree d ON d.programme_id = $1 AND d.id = x.id JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id
  ORDER BY x.perhaps, d.label LIMIT 1000`;

const TRIPS = `
  SELECT tr.id, tr.went_on AS "wentOn", st.name AS stand FROM (
    SELECT DISTINCT u.trip_id FROM sources k JOIN bundle u ON u.programme_id = $1 AND u.id = k.bundle_id) x
  JOIN trip tr ON tr.programme_id = $1 AND tr.id = x.trip_id JOIN stand st ON st.programme_id = $1 AND st.id = tr.stand_id
  ORDER BY tr.went_on, tr.id LIMIT 1000`;

/** Given out after plants of the line came into the batch. */
const GIVEN = `
  SELECT m.batch_id AS "batchId", ${LABEL('m.batch_id')} AS label, m.entry_id AS "entryId", m.n, m.day
  FROM line JOIN movement m ON m.programme_id = $1 AND m.batch_id = line.id AND m.effect = 'givenOut' AND m.day >= line.since`;

const list = (name: string, select: string): string => `(SELECT coalesce(json_agg(x), '[]') FROM (${select}) x) AS ${name}`;

/** First who belongs to it, and how many: as texts, which the next statement takes as they are. */
const walkSql = ({ before, select }: ReturnType<typeof seedsOf>): string => `
WITH RECURSIVE ${[...before, ''].join(',')}
  asked AS (SELECT $2::text AS id, $3::date AS from_day, $4::date AS until_day),
  seed AS MATERIALIZED (
    SELECT id, min(since) AS since, max(until) AS until, bool_and(perhaps) AS perhaps FROM (${select}) x GROUP BY id ORDER BY id LIMIT ${MOST_SEEDS + 1}),
  ${WALK}
SELECT array_agg(id)::text AS ids, array_agg(rank)::text AS ranks, array_agg(perhaps)::text AS perhaps, array_agg(since)::text AS since,
  (SELECT count(*) FROM seed) AS seeds FROM line`;

interface Line extends Record<string, unknown> {
  /** Arrays in PostgreSQL's own words; nothing where there are no batches. */
  readonly ids: string | null;
  readonly ranks: string | null;
  readonly perhaps: string | null;
  readonly since: string | null;
  readonly seeds: number;
}

/**
 * Then what is told of them. The database knows how long an array is, and so reads a few rows one by one
 * and many in one sweep; of a walk of its own it would not know.
 */
const TOLD = `
WITH RECURSIVE
  line AS MATERIALIZED (SELECT * FROM unnest($2::uuid[], $3::int[], $4::boolean[], $5::date[]) AS line (id, rank, perhaps, since)),
  known AS MATERIALIZED (
    SELECT line.*, b.opened_on, b.sticking_id, s.balance, s.held, s.place_id FROM line JOIN batch b ON b.programme_id = $1 AND b.id = line.id
    JOIN batch_state s ON s.programme_id = $1 AND s.batch_id = line.id),
  shown AS MATERIALIZED (SELECT * FROM known ORDER BY rank, opened_on, id LIMIT $6),
  -- Days on which any of them stood there, place by place: one row a stretch of days, however many batches did.
  stood AS (
    SELECT place_id, lower(days) AS from_day, coalesce(upper(days) - 1, 'infinity') AS until_day FROM (
      SELECT y.place_id, unnest(range_agg(daterange(y.from_day, y.to_day, '[]'))) AS days
      FROM line JOIN stay y ON y.programme_id = $1 AND y.batch_id = line.id GROUP BY y.place_id) together),
  neighbour AS MATERIALIZED (
    SELECT y.batch_id AS id, y.place_id, min(greatest(y.from_day, o.from_day)) AS from_day,
      nullif(max(least(coalesce(y.to_day, 'infinity'), o.until_day)), 'infinity') AS until_day
    FROM stood o JOIN stay y ON y.programme_id = $1 AND y.place_id = o.place_id AND y.from_day <= o.until_day AND coalesce(y.to_day, 'infinity') >= o.from_day
    WHERE NOT EXISTS (SELECT FROM line WHERE line.id = y.batch_id)
    GROUP BY y.batch_id, y.place_id),
  shown_beside AS MATERIALIZED (
    SELECT n.*, s.balance, s.held, s.place_id AS now_id FROM (SELECT * FROM neighbour ORDER BY from_day, id, place_id LIMIT $6) n
    JOIN batch_state s ON s.programme_id = $1 AND s.batch_id = n.id),
  sources AS (
    SELECT k.id, k.donor_tree_id, k.bundle_id FROM (SELECT DISTINCT sticking_id FROM known WHERE ${CAME_BEFORE('rank')}) x
    JOIN sticking k ON k.programme_id = $1 AND k.id = x.sticking_id),
  given AS MATERIALIZED (${GIVEN}),
  ${WHEREABOUTS(`
    SELECT place_id AS id FROM shown_beside
    UNION SELECT now_id FROM shown_beside
    UNION SELECT place_id FROM shown`)}
SELECT ${list('batches', BATCHES)}, ${list('beside', BESIDE)}, ${list('given', 'SELECT * FROM given ORDER BY day, "batchId" LIMIT $6')},
  ${list('"donorTrees"', TREES)}, ${list('trips', TRIPS)},
  json_build_object(
    'batches', (SELECT count(*) FROM line), 'beside', (SELECT count(*) FROM neighbour),
    'plants', (SELECT coalesce(sum(balance), 0) FROM known),
    'given', (SELECT coalesce(sum(n), 0) FROM given)) AS sums`;

const NAMES: Readonly<Record<Subject['kind'], string>> = {
  batchId: `SELECT coalesce(${LABEL('b.id')}, '…' || right(b.id::text, 6)) AS name FROM batch b WHERE b.programme_id = $1 AND b.id = $2::uuid`,
  placeId: `WITH RECURSIVE up AS (
      SELECT name::text, parent_id, 0 AS n FROM place WHERE programme_id = $1 AND id = $2::uuid
      UNION ALL SELECT p.name::text, p.parent_id, up.n + 1 FROM up JOIN place p ON p.programme_id = $1 AND p.id = up.parent_id)
    SELECT string_agg(name, ' › ' ORDER BY n DESC) AS name FROM up HAVING count(*) > 0`,
  fillingId: `SELECT p.name || ', ' || f.medium || ', ' || f.filled_on AS name FROM tray_filling f JOIN place p ON p.programme_id = $1 AND p.id = f.place_id
    WHERE f.programme_id = $1 AND f.id = $2::uuid`,
  mediumLot: `SELECT $2::text AS name WHERE EXISTS (SELECT FROM tray_filling WHERE programme_id = $1 AND lower(medium_lot) = lower($2))
    OR EXISTS (SELECT FROM batch WHERE programme_id = $1 AND lower(medium) = lower($2))`,
  donorTreeId: `SELECT label AS name FROM donor_tree WHERE programme_id = $1 AND id = $2::uuid`,
  tripId: `SELECT st.name || ', ' || t.went_on AS name FROM trip t JOIN stand st ON st.programme_id = $1 AND st.id = t.stand_id WHERE t.programme_id = $1 AND t.id = $2::uuid`,
};

@Injectable()
export class TraceQueries {
  /** @throws DomainError `record/unknown` */
  async head(sql: UnitOfWork, programmeId: string, { kind, id }: Subject, zone: string): Promise<{ asOf: string; name: string }> {
    const head = await sql.maybe<{ asOf: string; name: string }>(`SELECT present_day($3) AS "asOf", x.name FROM (${NAMES[kind]}) x`, [programmeId, id, zone]);
    if (!head) throw new DomainError('record/unknown', 'there is nothing here that a trace could begin at', { [kind]: id });
    return head;
  }

  /** Both ways along the line, what stood beside it, and what left: two queries, whatever the size. */
  async follow(sql: UnitOfWork, programmeId: string, subject: Subject, { from, until, limit }: TraceQuery): Promise<Followed> {
    const { ids, ranks, perhaps, since, seeds } = await sql.one<Line>(walkSql(seedsOf(subject)), [programmeId, subject.id, from ?? null, until ?? null]);
    const told = await sql.one<Told>(TOLD, [programmeId, ids ?? '{}', ranks ?? '{}', perhaps ?? '{}', since ?? '{}', limit]);
    return { ...told, sums: { ...told.sums, seeds } };
  }
}
