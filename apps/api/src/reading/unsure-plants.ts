/**
 * One batch, looked up by its key. How many rows a recursive query answers the planner overrates by hundreds, and
 * so reads every batch of the programme to join a few with it; a limit of one leaves it no choice.
 */
export const THE_BATCH = (id: string): string => `SELECT * FROM batch WHERE programme_id = $1 AND id = ${id} LIMIT 1`;

/**
 * Mixed batches with all that went into them: CTEs the last of which, `origin`, answers `id, from_id`,
 * the batch itself among the latter. The programme is `$1`. Needs `WITH RECURSIVE`.
 */
export const MIXED_ORIGIN = `
  mixed AS (
    SELECT batch_id AS id FROM mixed_part WHERE programme_id = $1
    UNION
    SELECT b.id FROM mixed JOIN batch b ON b.programme_id = $1 AND b.parent_id = mixed.id AND b.sticking_id IS NULL),
  origin AS (
    SELECT id, id AS from_id FROM mixed
    UNION
    SELECT o.id, up.from_id FROM origin o JOIN (
      SELECT batch_id, from_batch_id AS from_id FROM mixed_part WHERE programme_id = $1
      UNION ALL
      SELECT m.id, b.parent_id FROM mixed m CROSS JOIN LATERAL (${THE_BATCH('m.id')}) b WHERE b.parent_id IS NOT NULL) up ON up.batch_id = o.from_id)`;

/**
 * Plants whose donor is one of several: CTEs after `chosen`, the last of which answers
 * `id, stage, balance, stand_id, taxon_id, candidates`. The programme is `$1`.
 *
 * Mixed batches are found from what went into them, then down to what came of them, since
 * nothing else tells them from the many others. A batch counts for a stand when every donor
 * tree that it may be of stands there, and all that went into it is chosen.
 */
export const UNSURE_PLANTS = `${MIXED_ORIGIN},
  holds AS (
    SELECT o.id AS batch_id, b.sticking_id FROM origin o CROSS JOIN LATERAL (${THE_BATCH('o.from_id')}) b WHERE b.sticking_id IS NOT NULL
    UNION
    SELECT b.id, s.id FROM sticking s JOIN batch b ON b.programme_id = $1 AND b.sticking_id = s.id
    WHERE s.programme_id = $1 AND s.donor_tree_id IS NULL),
  held AS (SELECT * FROM holds WHERE batch_id IN (SELECT h.batch_id FROM holds h JOIN chosen USING (sticking_id))),
  unsure AS (
    SELECT b.id, b.stage, x.balance, min(d.stand_id::text)::uuid AS stand_id, min(d.taxon_id::text)::uuid AS taxon_id,
           jsonb_agg(DISTINCT coalesce(d.clone_group_id, d.id)) AS candidates
    FROM held h
    CROSS JOIN LATERAL (${THE_BATCH('h.batch_id')}) b
    CROSS JOIN LATERAL (SELECT balance FROM batch_state WHERE programme_id = $1 AND batch_id = b.id AND balance > 0 LIMIT 1) x
    CROSS JOIN LATERAL (SELECT id, donor_tree_id FROM sticking WHERE programme_id = $1 AND id = h.sticking_id LIMIT 1) s
    LEFT JOIN chosen c ON c.sticking_id = s.id
    LEFT JOIN sticking_candidate sc ON sc.programme_id = $1 AND sc.sticking_id = s.id AND s.donor_tree_id IS NULL
    LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = coalesce(s.donor_tree_id, sc.donor_tree_id)
    GROUP BY b.id, b.stage, x.balance
    HAVING count(DISTINCT d.stand_id) = 1 AND bool_and(d.id IS NOT NULL AND c.sticking_id IS NOT NULL))`;
