-- When a batch was last looked at by a tug or with roots in sight, last as a sample, and last looked over without a
-- count: with nothing to report, or with some found dead. What is due asks for these days of every living batch; read
-- from the entries, that grows with every count ever made.
-- They follow from the entries by the replay, as all of this table does, and `verify` compares them.
--
-- Locks: batch_state while it is filled. Undo by hand: drop the columns.

ALTER TABLE batch_state
  ADD COLUMN strong_look_on date,
  ADD COLUMN sampled_on     date,
  ADD COLUMN looked_over_on date;

-- What each count says after its corrections. Of several corrections of one version the first in content order
-- stands; here that is the first by day and id. Rebuilding the books settles what lines of a workday would order otherwise.
WITH RECURSIVE said AS (
  SELECT e.programme_id, e.id AS entry_id, e.id AS version_id, e.observed_on, e.body FROM entry e
  WHERE e.kind = 'counted' AND NOT e.author_unverified
    AND (e.body ->> 'look' IN ('tug', 'lifted') OR e.body ? 'sampleOf'
      OR EXISTS (SELECT FROM entry c WHERE c.programme_id = e.programme_id AND c.corrects_id = e.id))
  UNION ALL
  SELECT s.programme_id, s.entry_id, c.id, coalesce((c.body #>> '{instead,observedOn}')::date, s.observed_on), c.body #> '{instead,saying}'
  FROM said s CROSS JOIN LATERAL (
    SELECT id, body FROM entry
    WHERE programme_id = s.programme_id AND corrects_id = s.entry_id AND saw_version_id = s.version_id AND NOT author_unverified
    ORDER BY observed_on, id LIMIT 1) c
), last_said AS (
  SELECT * FROM said s WHERE body IS NOT NULL AND NOT EXISTS (
    SELECT FROM said n JOIN entry c ON c.programme_id = n.programme_id AND c.id = n.version_id
    WHERE n.programme_id = s.programme_id AND n.entry_id = s.entry_id AND c.saw_version_id = s.version_id)
), looks AS (
  SELECT programme_id, (body ->> 'batchId')::uuid AS batch_id, max(observed_on) FILTER (WHERE body ->> 'look' IN ('tug', 'lifted')) AS strong_on,
    max(observed_on) FILTER (WHERE body ? 'sampleOf') AS sampled_on
  FROM last_said GROUP BY 1, 2
)
UPDATE batch_state s SET strong_look_on = l.strong_on, sampled_on = l.sampled_on
FROM looks l WHERE l.programme_id = s.programme_id AND l.batch_id = s.batch_id;

-- Nothing else asks for counts of a sample.
DROP INDEX entry_of_a_sample;

-- The dead that were told, by the last version of all; rebuilding the books settles rival corrections.
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
