-- By which entries a batch is held now, in the order in which they hold it. One bit was not enough: a batch may be held
-- for two reasons, and the end of one must leave the other. It follows from the entries by the replay, as all of this
-- table does, and `verify` compares it.
--
-- Locks: batch_state while it is filled. Undo by hand: drop the constraint and the column.

ALTER TABLE batch_state ADD COLUMN held_by uuid[] NOT NULL DEFAULT '{}';

-- So far every release ended all: what held a batch last holds it. Rebuilding the books finds what held it before.
UPDATE batch_state s SET held_by = ARRAY[h.id] FROM (
  SELECT DISTINCT ON (t.programme_id, t.batch_id) t.programme_id, t.batch_id, e.id
  FROM entry_touch t JOIN entry e ON e.programme_id = t.programme_id AND e.id = t.entry_id
  WHERE e.kind = 'held' OR (e.kind = 'received' AND e.body ->> 'source' = 'return')
  ORDER BY t.programme_id, t.batch_id, e.observed_on DESC, e.received_at DESC, e.id DESC
) h WHERE s.held AND h.programme_id = s.programme_id AND h.batch_id = s.batch_id;

ALTER TABLE batch_state ADD CONSTRAINT batch_is_held_by_an_entry CHECK (held = (cardinality(held_by) > 0));
