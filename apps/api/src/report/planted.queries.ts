import { Injectable } from '@nestjs/common';
import type { FunderQuery } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';

/** A batch of planted trees, as the books hold it on a day. */
export interface PlantedBatch extends Record<string, unknown> {
  readonly id: string;
  readonly site: string;
  readonly siteId: string;
  readonly plotId: string;
  readonly donorId: string | null;
  readonly taxon: string;
  readonly taxonId: string;
  /** The day on which its trees were planted first. */
  readonly plantedOn: string;
  /** What came into it, less what was split off. */
  readonly planted: number;
  readonly dead: number;
  readonly givenOut: number;
  /** Counts and checks that named it, on whatever day. */
  readonly looks: string[];
  /** By check: trees that were missed there a second time, and are lost by it. */
  readonly missedAgain: Readonly<Record<string, number>>;
}

const net = (plus: string, minus: string): string => `(coalesce(sum(m.n) FILTER (WHERE m.effect IN (${plus})), 0) - coalesce(sum(m.n) FILTER (WHERE m.effect IN (${minus})), 0))::int`;

/** Trees carried from one batch of planted ones into another keep the day of planting. */
const PLANTED = `
WITH RECURSIVE root AS (
  SELECT b.id, b.parent_id, b.opened_on FROM batch b LEFT JOIN batch up ON up.programme_id = $1 AND up.id = b.parent_id
  WHERE b.programme_id = $1 AND b.stage = 'planted' AND b.opened_on <= $2 AND (up.id IS NULL OR up.stage <> 'planted')
  UNION ALL
  SELECT b.id, b.parent_id, root.opened_on FROM root JOIN batch b ON b.programme_id = $1 AND b.parent_id = root.id AND b.stage = 'planted' AND b.opened_on <= $2
), booked AS (
  SELECT root.id, root.opened_on,
    ${net(`'wentIn', 'received', 'found', 'splitIn', 'givenIn', 'mixedIn', 'identifiedIn', 'restuckIn'`, `'splitOut', 'givenAcross', 'mixedOut', 'identifiedOut', 'restuckOut', 'wentOn'`)} AS planted,
    ${net(`'died', 'unaccounted', 'thrownOut', 'notRooted'`, `'takenBack'`)} AS dead, ${net(`'givenOut'`, `''`)} AS given_out
  FROM root JOIN movement m ON m.programme_id = $1 AND m.batch_id = root.id AND m.day <= $2 GROUP BY 1, 2
)
SELECT b.id, coalesce(up.name, p.name)::text AS site, coalesce(up.id, p.id) AS "siteId", p.id AS "plotId", coalesce(d.clone_group_id, d.id) AS "donorId",
  coalesce(t.scientific_name::text, '') AS taxon, coalesce(t.id::text, '') AS "taxonId", booked.opened_on AS "plantedOn", booked.planted, booked.dead, booked.given_out AS "givenOut",
  ARRAY(SELECT e.id FROM entry_touch x JOIN entry e ON e.programme_id = $1 AND e.id = x.entry_id AND e.kind IN ('checked', 'counted') WHERE x.programme_id = $1 AND x.batch_id = b.id) AS looks,
  (SELECT coalesce(json_object_agg(lost.entry_id, lost.n), '{}') FROM (
    SELECT m.entry_id, sum(m.n)::int AS n FROM movement m WHERE m.programme_id = $1 AND m.batch_id = b.id AND m.effect = 'unaccounted' AND m.day <= $2 GROUP BY m.entry_id) lost) AS "missedAgain"
FROM booked JOIN batch b ON b.programme_id = $1 AND b.id = booked.id
JOIN place p ON p.programme_id = $1 AND p.id = coalesce(
  (SELECT y.place_id FROM stay y WHERE y.programme_id = $1 AND y.batch_id = b.id AND y.from_day <= $2 ORDER BY y.seq DESC LIMIT 1), b.opening_place_id)
LEFT JOIN place up ON up.programme_id = $1 AND up.id = p.parent_id AND up.kind = 'site'
LEFT JOIN sticking k ON k.programme_id = $1 AND k.id = b.sticking_id
LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = k.donor_tree_id
LEFT JOIN taxon t ON t.programme_id = $1 AND t.id = coalesce(k.taxon_id, (
  WITH RECURSIVE part AS (
    SELECT b.id UNION SELECT from_id FROM part, LATERAL (
      SELECT m.from_batch_id AS from_id FROM mixed_part m WHERE m.programme_id = $1 AND m.batch_id = part.id
      UNION ALL SELECT o.parent_id FROM batch o WHERE o.programme_id = $1 AND o.id = part.id AND o.sticking_id IS NULL AND o.parent_id IS NOT NULL) y)
  SELECT CASE WHEN count(DISTINCT s.taxon_id) = 1 THEN min(s.taxon_id::text)::uuid END FROM part JOIN batch o ON o.programme_id = $1 AND o.id = part.id
  JOIN sticking s ON s.programme_id = $1 AND s.id = o.sticking_id))
WHERE booked.planted > 0`;

@Injectable()
export class PlantedQueries {
  /** Every batch of planted trees on that day; which of them are asked for is for the report to say. */
  async batches(sql: UnitOfWork, programmeId: string, asOf: string): Promise<PlantedBatch[]> {
    return sql.rows<PlantedBatch>(PLANTED, [programmeId, asOf]);
  }
}

export const isAskedFor = (batch: PlantedBatch, season: number, asked: FunderQuery): boolean =>
  (asked.siteId === undefined || asked.siteId === batch.siteId) && (asked.taxonId === undefined || asked.taxonId === batch.taxonId) && (asked.season === undefined || asked.season === season);
