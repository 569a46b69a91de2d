-- Where a tray stood when: it moves with all it holds, and its plants have no entry of that.
--
-- Locks: a new table only. Undo by hand: drop the table.

CREATE TABLE place_move (
  programme_id   uuid           NOT NULL,
  id             uuid           NOT NULL,
  place_id       uuid           NOT NULL,
  -- Empty: it lay in no other place.
  from_parent_id uuid,
  to_parent_id   uuid,
  moved_on       date           NOT NULL,
  moved_by       uuid           NOT NULL,
  written_at     timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  CONSTRAINT place_move_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT place_move_is_of_a_place FOREIGN KEY (programme_id, place_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT place_move_comes_from_a_place FOREIGN KEY (programme_id, from_parent_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT place_move_goes_to_a_place FOREIGN KEY (programme_id, to_parent_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT place_move_is_told_by_a_person FOREIGN KEY (programme_id, moved_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT place_move_does_not_go_into_itself CHECK (to_parent_id <> place_id)
);
CREATE INDEX place_move_by_place ON place_move (programme_id, place_id, moved_on);

CALL guard_rows_of('place_move', 'SELECT, INSERT');
CALL hide_from_partners('place_move');
CREATE TRIGGER place_move_is_never_rewritten BEFORE UPDATE OR DELETE ON place_move FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
