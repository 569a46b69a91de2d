-- What is due: how often places are walked, when cuttings of a species are looked at, moved on and called,
-- how often potted plants are looked at for their grade, and what was put off.
--
-- What is due is never stored: it follows from the entries and from these days. Putting off is stored, since
-- somebody decided it.
--
-- Locks: taxon, place, programme and sticking, briefly (columns without a rewrite; two indexes are built).
-- Undo by hand: drop put_off, the indexes and the columns.

ALTER TABLE taxon
  -- Days from sticking. Empty: the programme's own history, or Sprigline's default.
  ADD COLUMN first_check_days smallint,
  ADD COLUMN verdict_days     smallint,
  ADD COLUMN moving_on_days   smallint,
  ADD CONSTRAINT taxon_days_are_within_ten_years CHECK (
    first_check_days BETWEEN 1 AND 3650 AND verdict_days BETWEEN 1 AND 3650 AND moving_on_days BETWEEN 1 AND 3650);

ALTER TABLE place
  -- Empty: as the nearest place above says.
  ADD COLUMN round_every_days smallint,
  ADD CONSTRAINT place_is_walked_within_a_year CHECK (round_every_days BETWEEN 1 AND 366);

ALTER TABLE programme
  ADD COLUMN grade_check_every_days smallint NOT NULL DEFAULT 28,
  ADD CONSTRAINT programme_looks_at_the_grade_within_a_year CHECK (grade_check_every_days BETWEEN 1 AND 366);

-- The last closed stickings of a species tell its days.
CREATE INDEX sticking_by_taxon_and_day ON sticking (programme_id, taxon_id, stuck_on);
-- Counts of a sample are few, and no projection remembers them.
CREATE INDEX entry_of_a_sample ON entry (programme_id, id) WHERE kind = 'counted' AND body ? 'sampleOf';

-- Of one thing due on one day: another due day is not put off.
CREATE TABLE put_off (
  programme_id uuid           NOT NULL,
  id           uuid           NOT NULL,
  kind         text           NOT NULL,
  -- Where the round is, the site, or where the batch stood then.
  place_id     uuid           NOT NULL,
  batch_id     uuid,
  -- Year in which the planting season began, for a check at a site.
  season_year  smallint,
  due_on       date           NOT NULL,
  until        date           NOT NULL,
  reason       words          NOT NULL,
  by_person_id uuid           NOT NULL,
  at           timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  CONSTRAINT put_off_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT put_off_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT put_off_is_at_a_place FOREIGN KEY (programme_id, place_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT put_off_is_of_a_batch FOREIGN KEY (programme_id, batch_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT put_off_is_by_a_person FOREIGN KEY (programme_id, by_person_id) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT put_off_kind_is_known CHECK (kind IN ('round', 'firstCheck', 'verdict', 'movingOn', 'gradeCheck', 'siteCheck')),
  CONSTRAINT put_off_names_what_its_kind_needs CHECK (
    (kind IN ('firstCheck', 'verdict', 'movingOn', 'gradeCheck')) = (batch_id IS NOT NULL) AND (kind = 'siteCheck') = (season_year IS NOT NULL))
);
CREATE INDEX put_off_by_day ON put_off (programme_id, until);

CALL guard_rows_of('put_off', 'SELECT, INSERT');
CALL hide_from_partners('put_off');
CREATE TRIGGER put_off_is_never_rewritten BEFORE UPDATE OR DELETE ON put_off FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
