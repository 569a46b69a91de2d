import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Finding } from './finding.ts';

/** Batches that come from themselves, by parents or by mixing. */
export async function circles(sql: UnitOfWork, programmeId: string): Promise<Finding[]> {
  const rows = await sql.rows<{ id: string }>(
    `WITH RECURSIVE step AS (
       SELECT id AS child, parent_id AS parent FROM batch WHERE programme_id = $1 AND parent_id IS NOT NULL
       UNION SELECT batch_id, from_batch_id FROM mixed_part WHERE programme_id = $1
     ), up AS (
       SELECT child AS id, parent AS at FROM step UNION SELECT up.id, step.parent FROM up JOIN step ON step.child = up.at
     )
     SELECT id FROM up WHERE id = at ORDER BY id`,
    [programmeId],
  );
  return rows.map(({ id }) => ({ rule: 'line-is-no-tree', programmeId, sentence: `The batch ${id} is its own ancestor.` }));
}

/**
 * A batch was opened by an entry that says where its plants came from. In one of the
 * versions of that entry, since a correction may have come to open it.
 */
const OPENED_BY = `
  WITH version AS (
    SELECT b.id AS batch_id, said FROM batch b
    JOIN entry e ON e.programme_id = $1 AND (e.id = b.opening_entry_id OR e.corrects_id = b.opening_entry_id)
    CROSS JOIN LATERAL coalesce(e.body #> '{instead,saying}', e.body) AS said WHERE b.programme_id = $1
  ), opening AS (
    SELECT batch_id, said FROM version
    WHERE batch_id::text = CASE WHEN said ->> 'kind' IN ('stuck', 'received') THEN said ->> 'batchId' ELSE said ->> 'toBatchId' END
  )`;

/** Parents, stickings and opening entries that are not what the entries tell. */
export async function wrongParents(sql: UnitOfWork, programmeId: string): Promise<Finding[]> {
  const rows = await sql.rows<{ id: string; parent: string | null; told: string | null; is_told: boolean }>(
    `${OPENED_BY}
     SELECT b.id, b.parent_id::text AS parent, min(o.said ->> 'batchId') FILTER (WHERE o.said ->> 'kind' NOT IN ('stuck', 'received')) AS told, count(o.batch_id) > 0 AS is_told
     FROM batch b LEFT JOIN opening o ON o.batch_id = b.id
     WHERE b.programme_id = $1
     GROUP BY b.id, b.parent_id
     HAVING count(o.batch_id) = 0 OR count(*) FILTER (WHERE b.parent_id::text IS NOT DISTINCT FROM
       CASE WHEN o.said ->> 'kind' IN ('stuck', 'received') THEN NULL ELSE o.said ->> 'batchId' END) = 0
     ORDER BY b.id`,
    [programmeId],
  );
  return rows.map(({ id, parent, told, is_told }) => ({
    rule: 'parent-is-not-what-the-entry-says',
    programmeId,
    sentence: is_told
      ? `The batch ${id} says that it comes from ${parent ?? 'no batch'}, the entry that opened it says ${told ?? 'no batch'}.`
      : `The batch ${id} is opened by an entry that does not speak of it.`,
  }));
}

/** Batches of another sticking than the one that they came out of, though nothing restuck or identified them. */
export async function wrongStickings(sql: UnitOfWork, programmeId: string): Promise<Finding[]> {
  const rows = await sql.rows<{ id: string; sticking: string | null; told: string | null }>(
    `${OPENED_BY}
     SELECT b.id, b.sticking_id::text AS sticking, min(coalesce(o.said ->> 'stickingId', p.sticking_id::text)) AS told
     FROM batch b JOIN opening o ON o.batch_id = b.id LEFT JOIN batch p ON p.programme_id = $1 AND p.id::text = o.said ->> 'batchId' AND p.id <> b.id
     WHERE b.programme_id = $1 AND o.said ->> 'kind' <> 'mixed'
     GROUP BY b.id, b.sticking_id
     HAVING count(*) FILTER (WHERE b.sticking_id::text IS NOT DISTINCT FROM coalesce(o.said ->> 'stickingId', p.sticking_id::text)) = 0
     ORDER BY b.id`,
    [programmeId],
  );
  return rows.map(({ id, sticking, told }) => ({
    rule: 'parent-is-not-what-the-entry-says',
    programmeId,
    sentence: `The batch ${id} says that it is of the sticking ${sticking ?? 'of no one'}, its entries say ${told ?? 'of no one'}.`,
  }));
}
