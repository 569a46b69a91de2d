-- Log sheets that a group brings in: the file as it came, how it is to be read,
-- and which entry each of its rows became.
--
-- Locks: new tables only. Undo by hand: drop import_row, import_sheet.

CREATE TABLE import_sheet (
  programme_id uuid           NOT NULL,
  id           uuid           NOT NULL,
  file_name    words          NOT NULL,
  content      bytea          NOT NULL,
  sha256       bytea          NOT NULL,
  guess        jsonb          NOT NULL,
  plan         jsonb,
  state        text           NOT NULL DEFAULT 'read',
  result       jsonb,
  failure      text,
  uploaded_by  uuid           NOT NULL,
  uploaded_at  timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  CONSTRAINT import_sheet_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT import_sheet_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT import_sheet_is_brought_by_a_person FOREIGN KEY (programme_id, uploaded_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT import_sheet_state_is_known CHECK (state IN ('read', 'writing', 'written', 'failed'))
);

-- What a row said when it was last imported. The next sheet is compared with these.
CREATE TABLE import_row (
  programme_id uuid    NOT NULL,
  entry_id     uuid    NOT NULL,
  import_id    uuid    NOT NULL,
  -- As a spreadsheet shows it: the heading is row 1.
  row_number   integer NOT NULL,
  fact         jsonb   NOT NULL,
  CONSTRAINT import_row_pkey PRIMARY KEY (programme_id, entry_id),
  CONSTRAINT import_row_became_an_entry FOREIGN KEY (programme_id, entry_id) REFERENCES entry (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT import_row_is_of_an_import FOREIGN KEY (programme_id, import_id) REFERENCES import_sheet (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT import_row_is_below_the_heading CHECK (row_number > 1)
);
CREATE INDEX import_row_by_import ON import_row (programme_id, import_id);

CALL guard_rows_of('import_sheet');
CALL guard_rows_of('import_row');
CALL hide_from_partners('import_sheet');
CALL hide_from_partners('import_row');
