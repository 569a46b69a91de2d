-- When a batch was last looked over without a count: with nothing to report, or with some found dead. A round is
-- walked by it. It follows from the entries by the replay, as all of this table does, and `verify` compares it.
--
-- Locks: batch_state while it is filled. Undo by hand: drop the column.

ALTER TABLE batch_state ADD COLUMN looked_over_on date;

-- What was told so far, by its last version of all; rebuilding the books settles rival corrections.
WITH told AS (
  SELECT e.programme_id, coalesce(c.kind, e.kind) AS kind, coalesce(c.body #> '{instead,saying}', e.body) AS said,
    coalesce((c.body #>> '{instead,observedOn}')::date, e.observed_on) AS observed_on
  FROM entry e LEFT JOIN LATERAL (
    SELECT kind, body FROM entry WHERE programme_id = e.programme_id AND corrects_id = e.id AND NOT author_unverified
    ORDER BY received_at DESC, id DESC LIMIT 1) c ON true
  WHERE e.kind = 'died' AND NOT e.author_unverified
), looked AS (
  SELECT programme_id, (said ->> 'batchId')::uuid AS batch_id, max(observed_on) AS on_day FROM told WHERE kind <> 'withdrawn' GROUP BY 1, 2
)
UPDATE batch_state s SET looked_over_on = l.on_day FROM looked l WHERE l.programme_id = s.programme_id AND l.batch_id = s.batch_id;
