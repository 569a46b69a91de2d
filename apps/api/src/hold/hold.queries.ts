import type { HoldShown, PossibleSticking } from '@sprigline/contract';
import { IN_LINE, IN_LINE_FROM } from '../batch/shown.queries.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';

const HOLDS = `
WITH cause AS (
  SELECT k.batch_id, e.id, e.observed_on, e.kind, e.body, e.place_id, e.donor_tree_id, e.trip_id, e.written_by
  FROM batch_state k JOIN entry e ON e.programme_id = $1 AND e.id = ANY (k.held_by)
  WHERE k.programme_id = $1 AND k.held AND k.balance > 0
), holds AS (
  SELECT id, observed_on, kind, body, place_id, donor_tree_id, trip_id, written_by, array_agg(batch_id) AS batch_ids FROM cause GROUP BY 1, 2, 3, 4, 5, 6, 7, 8
)
SELECT h.id AS "entryId", h.observed_on AS "heldOn", w.name AS by,
  CASE WHEN h.kind = 'received' THEN 'return' WHEN h.donor_tree_id IS NOT NULL THEN 'donorTree' WHEN h.trip_id IS NOT NULL THEN 'trip' WHEN h.place_id IS NOT NULL THEN 'place'
    WHEN h.body ->> 'mediumLot' IS NOT NULL THEN 'mediumLot' WHEN h.body ->> 'batchId' IS NOT NULL THEN 'batch' ELSE 'batches' END AS subject,
  CASE WHEN h.kind <> 'received' THEN coalesce(h.donor_tree_id, h.trip_id, h.place_id, (h.body ->> 'batchId')::uuid) END AS "subjectId",
  CASE WHEN h.kind <> 'received' THEN coalesce(d.label, st.name || ', ' || to_char(tr.went_on, 'YYYY-MM-DD'), p.name, h.body ->> 'mediumLot') END AS "subjectName",
  h.body ->> 'reason' AS reason, h.body ->> 'sample' AS sample, h.body ->> 'result' AS result,
  (SELECT coalesce(json_agg(${IN_LINE} ORDER BY p.name, b.opened_on, b.id), '[]') FROM ${IN_LINE_FROM} WHERE b.programme_id = $1 AND b.id = ANY (h.batch_ids)) AS batches,
  (SELECT sum(s.balance)::int FROM batch_state s WHERE s.programme_id = $1 AND s.batch_id = ANY (h.batch_ids)) AS plants
FROM holds h
LEFT JOIN person w ON w.programme_id = $1 AND w.id = h.written_by
LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = h.donor_tree_id
LEFT JOIN trip tr ON tr.programme_id = $1 AND tr.id = h.trip_id LEFT JOIN stand st ON st.programme_id = $1 AND st.id = tr.stand_id
LEFT JOIN place p ON p.programme_id = $1 AND p.id = h.place_id
ORDER BY h.observed_on DESC, h.id DESC`;

/** What is held now, by what held it. */
export function holdsOf(sql: UnitOfWork, programmeId: string): Promise<HoldShown[]> {
  return sql.rows<HoldShown & Record<string, unknown>>(HOLDS, [programmeId]);
}

const POSSIBLE = `
WITH RECURSIVE origin AS (
  SELECT $2::uuid AS id
  UNION SELECT up.id FROM origin o JOIN batch b ON b.programme_id = $1 AND b.id = o.id AND b.sticking_id IS NULL
  JOIN LATERAL (SELECT b.parent_id AS id UNION SELECT m.from_batch_id FROM mixed_part m WHERE m.programme_id = $1 AND m.batch_id = b.id) up ON up.id IS NOT NULL
)
SELECT k.id, k.stuck_on AS "stuckOn", CASE WHEN d.id IS NOT NULL THEN json_build_object('id', d.id, 'label', d.label) END AS "donorTree",
  min(l.code::text) AS "fromLabel"
FROM origin o JOIN batch b ON b.programme_id = $1 AND b.id = o.id JOIN sticking k ON k.programme_id = $1 AND k.id = b.sticking_id
LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = k.donor_tree_id
LEFT JOIN label l ON l.programme_id = $1 AND l.batch_id = b.id
GROUP BY k.id, k.stuck_on, d.id, d.label ORDER BY d.label, k.stuck_on, k.id`;

export function possibleStickings(sql: UnitOfWork, programmeId: string, batchId: string): Promise<PossibleSticking[]> {
  return sql.rows<PossibleSticking & Record<string, unknown>>(POSSIBLE, [programmeId, batchId]);
}
