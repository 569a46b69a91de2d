import { Injectable } from '@nestjs/common';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { AS_CORRECTED } from './due-days.queries.ts';

export interface BatchRow {
  readonly id: string;
  readonly stage: 'cutting' | 'potted';
  readonly placeId: string;
  readonly label: string | null;
  readonly donorTree: string | null;
  readonly taxon: string | null;
  readonly taxonId: string | null;
  readonly since: string;
  readonly plants: number;
  readonly rootedNow: number | null;
  readonly rootedEver: number;
  readonly strongLookOn: string | null;
  readonly lastSeenOn: string;
  readonly calledOn: string | null;
  readonly held: boolean;
}

export interface Standing {
  readonly placeId: string;
  readonly batches: number;
  readonly plants: number;
  /** Of the batches there, the earliest of their last looks. */
  readonly oldestLookOn: string;
}

export interface PlantedThere extends Standing {
  readonly seasonYear: number;
  readonly plantedOn: string;
}

interface Rows extends Record<string, unknown> {
  readonly batches: BatchRow[];
  readonly standing: Standing[];
  readonly planted: PlantedThere[];
}

/** A sample is a look too, though the books take no whole count from it. */
const SAMPLED = `
SELECT t.batch_id, max(on_day) AS day FROM entry e JOIN entry_touch t ON t.programme_id = $1 AND t.entry_id = e.id ${AS_CORRECTED}
WHERE e.programme_id = $1 AND e.kind = 'counted' AND e.body ? 'sampleOf' AND NOT e.author_unverified
  AND c.kind IS DISTINCT FROM 'withdrawn' AND said ->> 'batchId' = t.batch_id::text GROUP BY t.batch_id`;

/** A check that missed a tree is no look at the whole batch for the books, yet the site was walked: all were looked for. */
const SEARCHED = `
SELECT max(on_day) FROM entry_touch t JOIN entry e ON e.programme_id = $1 AND e.id = t.entry_id AND e.kind = 'checked' AND NOT e.author_unverified ${AS_CORRECTED}
WHERE t.programme_id = $1 AND t.batch_id = s.batch_id AND c.kind IS DISTINCT FROM 'withdrawn' AND said ->> 'batchId' = s.batch_id::text
  AND (said ->> 'alive')::int + coalesce((said ->> 'notFound')::int, 0) >= s.balance`;

const STRONG_LOOK = `
SELECT max(on_day) FROM entry_touch t JOIN entry e ON e.programme_id = $1 AND e.id = t.entry_id AND e.kind = 'counted' AND NOT e.author_unverified ${AS_CORRECTED}
WHERE t.programme_id = $1 AND t.batch_id = a.batch_id AND c.kind IS DISTINCT FROM 'withdrawn' AND said ->> 'batchId' = a.batch_id::text
  AND said ->> 'look' IN ('tug', 'lifted')`;

/**
 * All that lives, once: what stands in each place, what is planted by season, and the batches that may be due.
 *
 * `$2` the day until which it is asked; `$3` `$4` shortest wait of each species; `$5` the shortest of all;
 * `$6` days between looks at potted plants; `$7` month in which a season starts.
 */
const LIVING = `
WITH RECURSIVE sampled AS (${SAMPLED}),
alive AS (
  SELECT s.batch_id, s.place_id, s.balance, s.rooted_now, s.rooted_ever, s.called_on, s.held, b.stage, b.parent_id, b.opened_on, b.sticking_id,
    greatest(coalesce(s.last_seen_on, b.opened_on), m.day, CASE WHEN s.not_found > 0 THEN (${SEARCHED}) END) AS looked_on
  FROM batch_state s JOIN batch b ON b.programme_id = $1 AND b.id = s.batch_id LEFT JOIN sampled m ON m.batch_id = s.batch_id
  WHERE s.programme_id = $1 AND s.balance > 0
), planting AS (
  -- A batch that was split or moved at its site was planted when its first one was.
  SELECT batch_id, place_id, balance, looked_on, parent_id, opened_on AS planted_on FROM alive WHERE stage = 'planted'
  UNION ALL
  SELECT p.batch_id, p.place_id, p.balance, p.looked_on, up.parent_id, up.opened_on FROM planting p
  JOIN batch up ON up.programme_id = $1 AND up.id = p.parent_id AND up.stage = 'planted'
), planted AS (
  SELECT batch_id, place_id, balance, looked_on, min(planted_on) AS planted_on FROM planting GROUP BY 1, 2, 3, 4
), wait AS (SELECT * FROM unnest($3::uuid[], $4::int[]) AS w (taxon_id, days)
), asked AS (
  SELECT a.*, k.taxon_id, k.donor_tree_id, coalesce(k.stuck_on, a.opened_on) AS since
  FROM alive a LEFT JOIN sticking k ON k.programme_id = $1 AND k.id = a.sticking_id LEFT JOIN wait w ON w.taxon_id = k.taxon_id
  WHERE a.stage = 'cutting' AND coalesce(k.stuck_on, a.opened_on) + coalesce(w.days, $5::int) <= $2::date OR a.stage = 'potted' AND a.looked_on + $6::int <= $2
)
SELECT
  (SELECT coalesce(json_agg(json_build_object('id', a.batch_id, 'stage', a.stage, 'placeId', a.place_id, 'donorTree', d.label, 'taxonId', a.taxon_id,
      'taxon', coalesce(x.common_name, x.scientific_name), 'since', a.since, 'plants', a.balance, 'rootedNow', a.rooted_now, 'rootedEver', a.rooted_ever,
      'lastSeenOn', a.looked_on, 'calledOn', a.called_on, 'held', a.held,
      'label', (SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.batch_id = a.batch_id ORDER BY l.given_at DESC, l.code LIMIT 1),
      'strongLookOn', CASE WHEN a.stage = 'cutting' AND a.rooted_ever = 0 THEN (${STRONG_LOOK}) END)), '[]')
    FROM asked a LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = a.donor_tree_id LEFT JOIN taxon x ON x.programme_id = $1 AND x.id = a.taxon_id) AS batches,
  (SELECT coalesce(json_agg(r), '[]') FROM (
    SELECT place_id AS "placeId", count(*) AS batches, sum(balance) AS plants, min(looked_on) AS "oldestLookOn" FROM alive GROUP BY place_id) r) AS standing,
  (SELECT coalesce(json_agg(r), '[]') FROM (
    SELECT place_id AS "placeId", extract(year FROM planted_on - make_interval(months => $7::int - 1))::int AS "seasonYear", min(planted_on) AS "plantedOn",
      count(*) AS batches, sum(balance) AS plants, min(looked_on) AS "oldestLookOn" FROM planted GROUP BY 1, 2) r) AS planted`;

@Injectable()
export class DueQueries {
  /**
   * @param until batches whose wait ends later are left out
   * @param waits the shortest wait of each species, in days, and the shortest where the species is not known
   */
  living(
    sql: UnitOfWork, programmeId: string,
    { until, waits, shortest, gradeEveryDays, seasonStartsIn }: { until: string; waits: ReadonlyMap<string, number>; shortest: number; gradeEveryDays: number; seasonStartsIn: number },
  ): Promise<Rows> {
    return sql.one<Rows>(LIVING, [programmeId, until, [...waits.keys()], [...waits.values()], shortest, gradeEveryDays, seasonStartsIn]);
  }
}
