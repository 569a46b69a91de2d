-- Work lists as they were printed, and what of them has been typed back.
--
-- A sheet of paper cannot be changed, so neither can its row: the numbers on the paper are the
-- numbers here. What is typed back are entries like any others; only that they came from this
-- line is kept, so that no sheet is typed twice.
--
-- Locks: new tables only. Undo by hand: drop work_list_typed, work_list_line, work_list.

CREATE TABLE work_list (
  programme_id uuid           NOT NULL,
  id           uuid           NOT NULL,
  kind         text           NOT NULL,
  -- Which batches were asked for.
  asked        jsonb          NOT NULL,
  made_by      uuid           NOT NULL,
  made_at      timestamptz(3) NOT NULL DEFAULT present_time(),
  CONSTRAINT work_list_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT work_list_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT work_list_is_made_by_a_person FOREIGN KEY (programme_id, made_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT work_list_kind_is_known CHECK (kind IN ('pottingUp', 'rootCheck', 'calling', 'hardeningOff', 'plantingDay', 'siteCheck'))
);
CREATE INDEX work_list_newest_first ON work_list (programme_id, made_at DESC, id DESC);

CREATE TABLE work_list_line (
  programme_id uuid    NOT NULL,
  work_list_id uuid    NOT NULL,
  -- As printed.
  number       integer NOT NULL,
  batch_id     uuid    NOT NULL,
  CONSTRAINT work_list_line_pkey PRIMARY KEY (programme_id, work_list_id, number),
  CONSTRAINT work_list_line_stands_on_a_list FOREIGN KEY (programme_id, work_list_id) REFERENCES work_list (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT work_list_line_names_a_batch FOREIGN KEY (programme_id, batch_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT work_list_names_a_batch_once UNIQUE (programme_id, work_list_id, batch_id),
  CONSTRAINT work_list_line_is_counted_from_one CHECK (number >= 1)
);

CREATE TABLE work_list_typed (
  programme_id uuid           NOT NULL,
  work_list_id uuid           NOT NULL,
  number       integer        NOT NULL,
  entry_id     uuid           NOT NULL,
  typed_by     uuid           NOT NULL,
  typed_at     timestamptz(3) NOT NULL DEFAULT present_time(),
  CONSTRAINT work_list_typed_pkey PRIMARY KEY (programme_id, work_list_id, number, entry_id),
  CONSTRAINT work_list_typed_is_a_printed_line FOREIGN KEY (programme_id, work_list_id, number) REFERENCES work_list_line (programme_id, work_list_id, number) ON DELETE RESTRICT,
  CONSTRAINT work_list_typed_became_an_entry FOREIGN KEY (programme_id, entry_id) REFERENCES entry (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT work_list_typed_is_by_a_person FOREIGN KEY (programme_id, typed_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT
);

CALL guard_rows_of('work_list', 'SELECT, INSERT');
CALL guard_rows_of('work_list_line', 'SELECT, INSERT');
CALL guard_rows_of('work_list_typed', 'SELECT, INSERT');
CALL hide_from_partners('work_list');
CALL hide_from_partners('work_list_line');
CALL hide_from_partners('work_list_typed');
CREATE TRIGGER work_list_is_never_rewritten BEFORE UPDATE OR DELETE ON work_list FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
CREATE TRIGGER work_list_line_is_never_rewritten BEFORE UPDATE OR DELETE ON work_list_line FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
CREATE TRIGGER work_list_typed_is_never_rewritten BEFORE UPDATE OR DELETE ON work_list_typed FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
