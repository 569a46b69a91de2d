-- Who was there, by name: adults only. Children are never named, only counted, in the workday itself.
--
-- Locks: entry, while the index is made. Undo by hand: drop the table and the index.

CREATE TABLE workday_person (
  programme_id uuid NOT NULL,
  workday_id   uuid NOT NULL,
  person_id    uuid NOT NULL,
  CONSTRAINT workday_person_pkey PRIMARY KEY (programme_id, workday_id, person_id),
  CONSTRAINT workday_person_was_at_a_workday FOREIGN KEY (programme_id, workday_id) REFERENCES workday (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT workday_person_is_a_person FOREIGN KEY (programme_id, person_id) REFERENCES person (programme_id, id) ON DELETE RESTRICT
);
CALL guard_rows_of('workday_person');
CALL hide_from_partners('workday_person');

-- What was done on a workday is found by it.
CREATE INDEX entry_by_workday ON entry (programme_id, workday_id) WHERE workday_id IS NOT NULL;
