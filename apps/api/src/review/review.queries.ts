import { Injectable } from '@nestjs/common';
import type { ReviewItem, ReviewQuery } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';

type Row = ReviewItem & Record<string, unknown>;

/** Flags and waiting entries alike: `batch_id` is null for the latter. */
const OPEN = `
WITH doubt AS (
  SELECT f.entry_id, f.batch_id, f.code, f.day, f.n FROM flag f WHERE f.programme_id = $1
  UNION ALL
  SELECT DISTINCT w.entry_id, NULL::uuid, 'waiting', e.observed_on, NULL::int
  FROM waiting_entry w JOIN entry e ON e.programme_id = $1 AND e.id = w.entry_id WHERE w.programme_id = $1
), open AS (
  SELECT d.*, coalesce(d.batch_id::text, '') AS batch_key FROM doubt d
  WHERE NOT EXISTS (SELECT FROM review r WHERE r.programme_id = $1 AND r.entry_id = d.entry_id AND r.code = d.code
    AND r.batch_id IS NOT DISTINCT FROM d.batch_id AND r.decision IN ('accepted', 'mended'))
)
SELECT o.entry_id AS "entryId", o.code, o.day, o.n, o.batch_key, e.kind, e.body AS said, e.note, seen.name AS "seenBy", wrote.name AS "writtenBy",
  to_char(e.received_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') AS "receivedAt",
  CASE WHEN b.id IS NOT NULL THEN json_build_object('id', b.id, 'stage', b.stage, 'donorLabel', d.label, 'placeName', p.name,
    'label', (SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.batch_id = b.id ORDER BY l.given_at DESC, l.code LIMIT 1)) END AS batch,
  ARRAY(SELECT w.waits_for_id FROM waiting_entry w WHERE w.programme_id = $1 AND w.entry_id = o.entry_id AND o.code = 'waiting') AS "waitsFor",
  (SELECT coalesce(json_agg(json_build_object('decision', r.decision, 'by', by.name, 'at', r.at, 'note', r.note, 'assignedTo', whom.name) ORDER BY r.at DESC), '[]')
    FROM review r JOIN person by ON by.programme_id = $1 AND by.id = r.by_person_id LEFT JOIN person whom ON whom.programme_id = $1 AND whom.id = r.assigned_to
    WHERE r.programme_id = $1 AND r.entry_id = o.entry_id AND r.code = o.code AND r.batch_id IS NOT DISTINCT FROM o.batch_id) AS decisions
FROM open o JOIN entry e ON e.programme_id = $1 AND e.id = o.entry_id
LEFT JOIN person seen ON seen.programme_id = $1 AND seen.id = e.seen_by LEFT JOIN person wrote ON wrote.programme_id = $1 AND wrote.id = e.written_by
LEFT JOIN batch b ON b.programme_id = $1 AND b.id = o.batch_id LEFT JOIN sticking k ON k.programme_id = $1 AND k.id = b.sticking_id
LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = k.donor_tree_id
LEFT JOIN batch_state s ON s.programme_id = $1 AND s.batch_id = b.id LEFT JOIN place p ON p.programme_id = $1 AND p.id = s.place_id
WHERE ($2::date IS NULL OR (o.day, o.entry_id, o.code, o.batch_key) > ($2, $3::uuid, $4, $5))
  AND ($6::uuid IS NULL OR $6 = (SELECT r.assigned_to FROM review r WHERE r.programme_id = $1 AND r.entry_id = o.entry_id AND r.code = o.code
    AND r.batch_id IS NOT DISTINCT FROM o.batch_id ORDER BY r.at DESC, r.id DESC LIMIT 1))
ORDER BY o.day, o.entry_id, o.code, o.batch_key LIMIT $7`;

@Injectable()
export class ReviewQueries {
  /** The oldest first: what has waited longest is seen first. */
  async open(sql: UnitOfWork, programmeId: string, { after, limit, assignedTo }: ReviewQuery): Promise<Part<ReviewItem>> {
    const [day, entryId, code, batchKey] = keysAfter(after, 4) ?? [];
    const rows = await sql.rows<Row>(OPEN, [programmeId, day ?? null, entryId ?? null, code ?? null, batchKey ?? null, assignedTo ?? null, limit + 1]);
    return partOf(rows, limit, (item) => [item.day, item.entryId, item.code, String(item['batch_key'])]);
  }
}
