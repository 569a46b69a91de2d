import { Injectable } from '@nestjs/common';
import type { DueKind } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { AS_CORRECTED } from './due-days.queries.ts';

/** A batch of cuttings whose shortest wait is over. */
export interface CuttingsRow {
  readonly id: string;
  readonly placeId: string;
  readonly taxonId: string | null;
  readonly since: string;
  readonly plants: number;
  readonly rootedNow: number | null;
  readonly rootedEver: number;
  readonly strongLookOn: string | null;
  readonly calledOn: string | null;
  readonly held: boolean;
}

/** A potted batch that waits for its look. */
export interface PottedRow {
  readonly id: string;
  readonly placeId: string;
  readonly plants: number;
  readonly lookedOn: string;
}

/** Potted batches of one place that wait, none of them put off. */
export interface PottedThere {
  readonly placeId: string;
  readonly batches: number;
  readonly oldestLookOn: string;
}

export interface Standing extends PottedThere {
  readonly plants: number;
}

export interface PlantedThere extends Standing {
  readonly seasonYear: number;
  readonly plantedOn: string;
}

export interface Living extends Record<string, unknown> {
  readonly cuttings: CuttingsRow[];
  readonly potted: PottedRow[];
  readonly pottedThere: PottedThere[];
  readonly standing: Standing[];
  readonly planted: PlantedThere[];
}

export interface LivingAsked {
  /** Batches whose wait ends later are left out. */
  readonly until: string;
  readonly kinds: readonly DueKind[];
  /** Where batches count, with the rank of each place in walking order. */
  readonly ranks: ReadonlyMap<string, number>;
  /** Only this batch, if it is one of its kinds. */
  readonly batchId?: string | undefined;
  /** Shortest wait of each species, in days, and the shortest where the species is not known. */
  readonly waits: ReadonlyMap<string, number>;
  readonly shortest: number;
  readonly gradeEveryDays: number;
  /** Potted batches that may be put off: named whatever their turn. */
  readonly putOff: readonly string[];
  /** How many of the others are named, the longest not looked at first, then in walking order. Left out, they are added up by place. */
  readonly named?: number | undefined;
  /** Day, rank and key of the item before the first one named. */
  readonly after?: readonly [day: string, rank: string, key: string] | undefined;
  readonly seasonStartsIn: number;
}

/**
 * A check that missed a tree is no look at the whole batch for the books, yet the site was walked: all were looked for.
 * Nor is the one that missed it again, after which it is lost and nothing is missing any more.
 */
const SEARCHED = `
SELECT max(on_day) FROM entry_touch t JOIN entry e ON e.programme_id = $1 AND e.id = t.entry_id AND e.kind = 'checked' AND NOT e.author_unverified ${AS_CORRECTED}
WHERE t.programme_id = $1 AND t.batch_id = s.batch_id AND c.kind IS DISTINCT FROM 'withdrawn' AND said ->> 'batchId' = s.batch_id::text
  AND (said ->> 'alive')::int + coalesce((said ->> 'notFound')::int, 0) >= s.balance`;

/** Since the last look at all of it, as the books take it. */
const MISSED_AGAIN = `b.stage = 'planted' AND 'siteCheck' = ANY ($9) AND EXISTS (
  SELECT FROM movement m WHERE m.programme_id = $1 AND m.batch_id = s.batch_id AND m.effect = 'unaccounted' AND m.day > coalesce(s.last_seen_on, b.opened_on))`;

/** Potted batches that are due, but for those that may be put off: one walk through a nursery can make tens of thousands of them. */
const WAITING = `
  SELECT a.batch_id, a.place_id, a.balance, a.looked_on, k.rank FROM alive a JOIN counting k ON k.id = a.place_id
  WHERE 'gradeCheck' = ANY ($9) AND a.stage = 'potted' AND a.looked_on + $6::int <= $2 AND a.batch_id <> ALL ($11::uuid[])`;

/**
 * All that lives, once: what stands in each place, what is planted by season, and the batches that may be due.
 *
 * `$2` the day until which it is asked; `$3` `$4` shortest wait of each species; `$5` the shortest of all;
 * `$6` days between looks at potted plants; `$7` month in which a season starts; `$8` and `$10` places that count, and
 * their ranks; `$9` kinds; `$11` potted batches that may be put off; `$12` how many others are named; `$13` after which; `$14` a batch.
 */
const LIVING = `
WITH RECURSIVE counting AS (SELECT * FROM unnest($8::uuid[], $10::int[]) AS k (id, rank)),
alive AS (
  -- A sample is a look too, though the books take no whole count from it.
  SELECT s.batch_id, s.place_id, s.balance, s.rooted_now, s.rooted_ever, s.strong_look_on, s.called_on, s.held, s.looked_over_on, b.stage, b.parent_id, b.opened_on, b.sticking_id,
    greatest(coalesce(s.last_seen_on, b.opened_on), s.sampled_on, CASE WHEN s.not_found > 0 OR (${MISSED_AGAIN}) THEN (${SEARCHED}) END) AS looked_on
  FROM batch_state s JOIN batch b ON b.programme_id = $1 AND b.id = s.batch_id
  WHERE s.programme_id = $1 AND s.balance > 0 AND ($14::uuid IS NULL OR s.batch_id = $14)
), planting AS (
  -- A batch that was split or moved at its site was planted when its first one was.
  SELECT batch_id, place_id, balance, looked_on, parent_id, opened_on AS planted_on FROM alive WHERE stage = 'planted'
  UNION ALL
  SELECT p.batch_id, p.place_id, p.balance, p.looked_on, up.parent_id, up.opened_on FROM planting p
  JOIN batch up ON up.programme_id = $1 AND up.id = p.parent_id AND up.stage = 'planted'
), planted AS (
  SELECT batch_id, place_id, balance, looked_on, min(planted_on) AS planted_on FROM planting GROUP BY 1, 2, 3, 4
), wait AS (SELECT * FROM unnest($3::uuid[], $4::int[]) AS w (taxon_id, days)
), cuttings AS (
  SELECT a.*, s.taxon_id, coalesce(s.stuck_on, a.opened_on) AS since FROM alive a JOIN counting k ON k.id = a.place_id
  LEFT JOIN sticking s ON s.programme_id = $1 AND s.id = a.sticking_id LEFT JOIN wait w ON w.taxon_id = s.taxon_id
  WHERE $9 && ARRAY['firstCheck', 'movingOn', 'verdict'] AND a.stage = 'cutting' AND coalesce(s.stuck_on, a.opened_on) + coalesce(w.days, $5::int) <= $2::date
), potted AS (
  SELECT batch_id, place_id, balance, looked_on FROM alive WHERE 'gradeCheck' = ANY ($9) AND stage = 'potted' AND batch_id = ANY ($11::uuid[])
  UNION ALL
  (SELECT batch_id, place_id, balance, looked_on FROM (${WAITING}) waiting
   WHERE $13::text[] IS NULL OR (looked_on + $6::int, rank, ('gradeCheck.' || batch_id) COLLATE "C") > (($13)[1]::date, ($13)[2]::int, ($13)[3])
   ORDER BY looked_on, rank, batch_id LIMIT coalesce($12::int, 0))
)
SELECT
  (SELECT coalesce(json_agg(json_build_object('id', batch_id, 'placeId', place_id, 'taxonId', taxon_id, 'since', since, 'plants', balance, 'rootedNow', rooted_now,
      'rootedEver', rooted_ever, 'strongLookOn', strong_look_on, 'calledOn', called_on, 'held', held)), '[]') FROM cuttings) AS cuttings,
  (SELECT coalesce(json_agg(json_build_object('id', batch_id, 'placeId', place_id, 'plants', balance, 'lookedOn', looked_on)), '[]') FROM potted) AS potted,
  CASE WHEN $12::int IS NULL THEN (SELECT coalesce(json_agg(r), '[]') FROM (
    SELECT place_id AS "placeId", count(*) AS batches, min(looked_on) AS "oldestLookOn" FROM (${WAITING}) waiting GROUP BY place_id) r) ELSE '[]' END AS "pottedThere",
  CASE WHEN 'round' = ANY ($9) THEN (SELECT coalesce(json_agg(r), '[]') FROM (
    SELECT place_id AS "placeId", count(*) AS batches, sum(balance) AS plants, min(greatest(looked_on, looked_over_on)) AS "oldestLookOn" FROM alive GROUP BY place_id) r) ELSE '[]' END AS standing,
  CASE WHEN 'siteCheck' = ANY ($9) THEN (SELECT coalesce(json_agg(r), '[]') FROM (
    SELECT place_id AS "placeId", extract(year FROM planted_on - make_interval(months => $7::int - 1))::int AS "seasonYear", min(planted_on) AS "plantedOn",
      count(*) AS batches, sum(balance) AS plants, min(looked_on) AS "oldestLookOn" FROM planted GROUP BY 1, 2) r) ELSE '[]' END AS planted`;

const NAMES = `
SELECT b.id, d.label AS "donorTree", coalesce(x.common_name, x.scientific_name) AS taxon,
  (SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.batch_id = b.id ORDER BY l.given_at DESC, l.code LIMIT 1) AS label
FROM batch b LEFT JOIN sticking s ON s.programme_id = $1 AND s.id = b.sticking_id
LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = s.donor_tree_id LEFT JOIN taxon x ON x.programme_id = $1 AND x.id = s.taxon_id
WHERE b.programme_id = $1 AND b.id = ANY ($2::uuid[])`;

export interface BatchNames extends Record<string, unknown> {
  readonly id: string;
  readonly label: string | null;
  readonly donorTree: string | null;
  readonly taxon: string | null;
}

@Injectable()
export class DueQueries {
  living(sql: UnitOfWork, programmeId: string, asked: LivingAsked): Promise<Living> {
    const { until, kinds, ranks, batchId, waits, shortest, gradeEveryDays, putOff, named, after, seasonStartsIn } = asked;
    return sql.one<Living>(LIVING, [
      programmeId, until, [...waits.keys()], [...waits.values()], shortest, gradeEveryDays, seasonStartsIn,
      [...ranks.keys()], kinds, [...ranks.values()], putOff, named ?? null, after ?? null, batchId ?? null,
    ]);
  }

  /** What people call these batches. */
  async names(sql: UnitOfWork, programmeId: string, batchIds: readonly string[]): Promise<ReadonlyMap<string, BatchNames>> {
    if (batchIds.length === 0) return new Map();
    return new Map((await sql.rows<BatchNames>(NAMES, [programmeId, batchIds])).map((row) => [row.id, row]));
  }
}
