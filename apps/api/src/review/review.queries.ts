import { Injectable } from '@nestjs/common';
import type { ReviewGroup, ReviewItem, ReviewQuery } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';

type Row = ReviewItem & Record<string, unknown>;

const isNotWithdrawn = (id: string): string => `NOT EXISTS (SELECT FROM entry c WHERE c.programme_id = $1 AND c.corrects_id = ${id} AND c.kind = 'withdrawn')`;

/** Decisions about the doubt `o`. */
const ABOUT_IT = `r.programme_id = $1 AND r.entry_id = o.entry_id AND r.code = o.code AND r.batch_id IS NOT DISTINCT FROM o.batch_id`;

/**
 * Flags, waiting entries, and what a phone could not get booked. `batch_id` is null where none is known; `of_id` is what a note told of.
 *
 * A note is settled once what it tells of is in the books after all, or a newer note tells of the same. If a coordinator was done
 * with it by then, they may have written it by hand, and it stands there twice. An id that is another entry's settles nothing.
 */
export const OPEN_DOUBTS = `
told AS (
  SELECT e.id, e.observed_on, b.id AS batch_id, (e.body #>> '{notBooked,id}')::uuid AS of_id, e.body #>> '{notBooked,code}' IS NOT DISTINCT FROM 'entry/id-reused' AS is_of_another,
    row_number() OVER (PARTITION BY e.body #>> '{notBooked,id}' ORDER BY e.received_at DESC, e.id DESC) = 1 AS is_newest
  FROM entry e LEFT JOIN batch b ON b.programme_id = $1 AND b.id = (e.body ->> 'batchId')::uuid
  WHERE e.programme_id = $1 AND e.kind = 'noted' AND e.body ? 'notBooked'
), doubt AS (
  SELECT f.entry_id, f.batch_id, f.code, f.day, f.n, NULL::uuid AS of_id FROM flag f WHERE f.programme_id = $1
  UNION ALL
  SELECT DISTINCT w.entry_id, NULL::uuid, 'waiting', e.observed_on, NULL::int, NULL::uuid
  FROM waiting_entry w JOIN entry e ON e.programme_id = $1 AND e.id = w.entry_id WHERE w.programme_id = $1
  UNION ALL
  SELECT t.id, t.batch_id, 'not-booked', t.observed_on, NULL::int, t.of_id FROM told t
  WHERE t.is_newest AND ${isNotWithdrawn('t.id')}
    AND (t.is_of_another OR NOT EXISTS (SELECT FROM entry e WHERE e.programme_id = $1 AND e.id = t.of_id))
  UNION ALL
  SELECT DISTINCT e.id, b.id, 'told-after-all', e.observed_on, NULL::int, t.of_id
  FROM told t JOIN entry e ON e.programme_id = $1 AND e.id = t.of_id LEFT JOIN batch b ON b.programme_id = $1 AND b.id = (e.body ->> 'batchId')::uuid
  WHERE NOT t.is_of_another AND ${isNotWithdrawn('e.id')}
    AND EXISTS (SELECT FROM review r WHERE r.programme_id = $1 AND r.entry_id = t.id AND r.code = 'not-booked' AND r.decision IN ('accepted', 'mended'))
), open AS (
  SELECT o.*, coalesce(o.batch_id::text, '') AS batch_key FROM doubt o
  WHERE NOT EXISTS (SELECT FROM review r WHERE ${ABOUT_IT} AND r.decision IN ('accepted', 'mended'))
)`;

/** With those about every note that told of the same. */
const DECIDED_SO_FAR = `(${ABOUT_IT} OR (r.programme_id = $1 AND r.code = 'not-booked' AND r.entry_id IN (SELECT t.id FROM told t WHERE t.of_id = o.of_id)))`;

/** Whom it was assigned to last; questions and answers since then change nothing about that. */
const ASSIGNED_TO = `(SELECT r.assigned_to FROM review r WHERE ${ABOUT_IT} AND r.decision = 'assigned' ORDER BY r.at DESC, r.id DESC LIMIT 1)`;

const OPEN = `
WITH ${OPEN_DOUBTS}
SELECT o.entry_id AS "entryId", o.code, o.day, o.n, o.batch_key, e.kind, e.body AS said, e.note, seen.name AS "seenBy", wrote.name AS "writtenBy",
  to_char(e.received_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') AS "receivedAt",
  wrote.user_id IS NOT NULL AND wrote.left_at IS NULL AS "canBeAsked",
  CASE WHEN b.id IS NOT NULL THEN json_build_object('id', b.id, 'stage', b.stage, 'donorLabel', d.label, 'placeName', p.name,
    'label', (SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.batch_id = b.id ORDER BY l.given_at DESC, l.code LIMIT 1)) END AS batch,
  ARRAY(SELECT w.waits_for_id FROM waiting_entry w WHERE w.programme_id = $1 AND w.entry_id = o.entry_id AND o.code = 'waiting') AS "waitsFor",
  (SELECT coalesce(json_agg(json_build_object('decision', r.decision, 'by', by.name, 'at', r.at, 'note', r.note, 'assignedTo', whom.name, 'askedOf', asked.name) ORDER BY r.at DESC), '[]')
    FROM review r JOIN person by ON by.programme_id = $1 AND by.id = r.by_person_id LEFT JOIN person whom ON whom.programme_id = $1 AND whom.id = r.assigned_to
    LEFT JOIN person asked ON asked.programme_id = $1 AND asked.id = r.asked_of WHERE ${DECIDED_SO_FAR}) AS decisions
FROM open o JOIN entry e ON e.programme_id = $1 AND e.id = o.entry_id
LEFT JOIN person seen ON seen.programme_id = $1 AND seen.id = e.seen_by LEFT JOIN person wrote ON wrote.programme_id = $1 AND wrote.id = e.written_by
LEFT JOIN batch b ON b.programme_id = $1 AND b.id = o.batch_id LEFT JOIN sticking k ON k.programme_id = $1 AND k.id = b.sticking_id
LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = k.donor_tree_id
LEFT JOIN batch_state s ON s.programme_id = $1 AND s.batch_id = b.id LEFT JOIN place p ON p.programme_id = $1 AND p.id = s.place_id
WHERE ($2::date IS NULL OR (o.day, o.entry_id, o.code, o.batch_key) > ($2, $3::uuid, $4, $5))
  AND ($6::uuid IS NULL OR $6 = ${ASSIGNED_TO}) AND ($7::text IS NULL OR o.code = $7)
ORDER BY o.day, o.entry_id, o.code, o.batch_key LIMIT $8`;

const GROUPS = `
WITH ${OPEN_DOUBTS}
SELECT o.code, count(*)::int AS n, min(o.day) AS oldest, count(*) FILTER (WHERE $2 = ${ASSIGNED_TO})::int AS mine
FROM open o GROUP BY o.code ORDER BY n DESC, o.code`;

@Injectable()
export class ReviewQueries {
  /** The oldest first: what has waited longest is seen first. */
  async open(sql: UnitOfWork, programmeId: string, { after, limit, assignedTo, code }: ReviewQuery): Promise<Part<ReviewItem>> {
    const [day, entryId, lastCode, batchKey] = keysAfter(after, 4) ?? [];
    const rows = await sql.rows<Row>(OPEN, [programmeId, day ?? null, entryId ?? null, lastCode ?? null, batchKey ?? null, assignedTo ?? null, code ?? null, limit + 1]);
    return partOf(rows, limit, (item) => [item.day, item.entryId, item.code, String(item['batch_key'])]);
  }

  /** How many of each kind are open, and how many of them are this person's. */
  groups(sql: UnitOfWork, programmeId: string, personId: string): Promise<ReviewGroup[]> {
    return sql.rows<ReviewGroup & Record<string, unknown>>(GROUPS, [programmeId, personId]);
  }
}
