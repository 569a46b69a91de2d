-- Labels on donor trees and places as well as on batches, and rolls of codes that are printed
-- before anybody knows what they will be on.
--
-- One table of labels for all three, so that a code is on one thing only because it is a key, and
-- not because two tables are compared. Who reads the labels of batches joins them by the batch,
-- and is told the same as before.
--
-- Locks: label against writers, while it gets its columns and an index. Undo by hand: drop
-- roll_code and label_roll, and, while only batches have labels, the two columns.

ALTER TABLE label
  ALTER COLUMN batch_id DROP NOT NULL,
  ADD COLUMN donor_tree_id uuid,
  ADD COLUMN place_id uuid,
  ADD CONSTRAINT label_is_on_a_donor_tree FOREIGN KEY (programme_id, donor_tree_id) REFERENCES donor_tree (programme_id, id) ON DELETE RESTRICT,
  ADD CONSTRAINT label_is_on_a_place FOREIGN KEY (programme_id, place_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  ADD CONSTRAINT label_is_on_one_thing CHECK (num_nonnulls(batch_id, donor_tree_id, place_id) = 1);
CREATE INDEX label_by_donor_tree ON label (programme_id, donor_tree_id) WHERE donor_tree_id IS NOT NULL;
CREATE INDEX label_by_place ON label (programme_id, place_id) WHERE place_id IS NOT NULL;
-- Thumbs are big: a label is looked up without regard to capitals.
CREATE INDEX label_as_typed ON label (programme_id, lower(code));

-- A partner reads the labels of what they are shown, and no others.
DROP POLICY partners_see_their_own ON label;
CREATE POLICY partners_see_their_own ON label AS RESTRICTIVE FOR SELECT TO sprigline_app USING (
  (SELECT this_partner() IS NULL)
  OR batch_id IN (SELECT batches_of_partner())
  OR place_id IN (SELECT places_of_partner())
  OR donor_tree_id IN (SELECT d.id FROM donor_tree d WHERE d.stand_id IN (SELECT stands_of_partner())));

CREATE TABLE label_roll (
  programme_id uuid           NOT NULL,
  id           uuid           NOT NULL,
  -- Such as "Potting shed, blue roll".
  name         words          NOT NULL,
  made_by      uuid           NOT NULL,
  made_at      timestamptz(3) NOT NULL DEFAULT present_time(),
  CONSTRAINT label_roll_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT label_roll_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT label_roll_is_made_by_a_person FOREIGN KEY (programme_id, made_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT
);
CREATE INDEX label_roll_newest_first ON label_roll (programme_id, made_at DESC, id DESC);

-- A code once drawn is never drawn again: it is on a piece of plastic somewhere, also if nobody
-- ever said what it is on. What it became stands in label.
CREATE TABLE roll_code (
  programme_id  uuid    NOT NULL,
  code          words   NOT NULL,
  label_roll_id uuid    NOT NULL,
  -- Along the roll, from 1.
  number        integer NOT NULL,
  CONSTRAINT roll_code_is_never_drawn_again PRIMARY KEY (programme_id, code),
  CONSTRAINT roll_code_is_on_a_roll FOREIGN KEY (programme_id, label_roll_id) REFERENCES label_roll (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT roll_code_stands_alone_on_its_roll UNIQUE (programme_id, label_roll_id, number),
  CONSTRAINT roll_code_is_counted_from_one CHECK (number > 0)
);

CALL guard_rows_of('label_roll', 'SELECT, INSERT');
CALL guard_rows_of('roll_code', 'SELECT, INSERT');
CALL hide_from_partners('label_roll');
CALL hide_from_partners('roll_code');

CREATE TRIGGER label_roll_is_never_rewritten BEFORE UPDATE OR DELETE ON label_roll FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
CREATE TRIGGER roll_code_is_never_rewritten BEFORE UPDATE OR DELETE ON roll_code FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
