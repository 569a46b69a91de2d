-- Photos of batches, donor trees and places. The pictures themselves are files, named by their
-- content; a row says what one shows, and is written after its files are there.
--
-- Locks: new table only. Undo by hand: drop it, and remove the folder of the pictures.

CREATE TABLE photo (
  programme_id     uuid           NOT NULL,
  -- Made by the caller: sending a photo twice keeps it once.
  id               uuid           NOT NULL,
  batch_id         uuid,
  donor_tree_id    uuid,
  place_id         uuid,
  -- The entry `noted` that it belongs to.
  note_id          uuid,
  kind             text           NOT NULL,
  taken_on         date           NOT NULL,
  -- As it was claimed; whoever brought it is told_by.
  taken_by         uuid           NOT NULL,
  -- Somebody could find the spot by it: for those who see exact places.
  shows_where      boolean        NOT NULL,
  -- SHA-256 of what was sent, which is not kept; and of the two pictures that were made of it.
  sent_hash        bytea          NOT NULL,
  large_hash       bytea          NOT NULL,
  small_hash       bytea          NOT NULL,
  -- Of the large one, in pixels.
  width            smallint       NOT NULL,
  height           smallint       NOT NULL,
  told_by          uuid           NOT NULL,
  -- The session or key that brought it.
  delivered_by     words          NOT NULL,
  received_at      timestamptz(3) NOT NULL DEFAULT present_time(),
  -- Taken down: the row stays, its pictures go once no other photo names them.
  withdrawn_at     timestamptz(3),
  withdrawn_by     uuid,
  withdrawn_reason text,
  CONSTRAINT photo_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT photo_is_of_a_batch FOREIGN KEY (programme_id, batch_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT photo_is_of_a_donor_tree FOREIGN KEY (programme_id, donor_tree_id) REFERENCES donor_tree (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT photo_is_of_a_place FOREIGN KEY (programme_id, place_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT photo_belongs_to_an_entry FOREIGN KEY (programme_id, note_id) REFERENCES entry (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT photo_is_taken_by_a_person FOREIGN KEY (programme_id, taken_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT photo_is_told_by_a_person FOREIGN KEY (programme_id, told_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT photo_is_withdrawn_by_a_person FOREIGN KEY (programme_id, withdrawn_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT photo_shows_one_thing CHECK (num_nonnulls(batch_id, donor_tree_id, place_id) = 1),
  CONSTRAINT photo_kind_is_known CHECK (kind IN ('plain', 'portrait')),
  CONSTRAINT photo_portrait_is_of_a_place CHECK (kind <> 'portrait' OR place_id IS NOT NULL),
  CONSTRAINT photo_names_its_pictures_by_sha_256 CHECK (octet_length(sent_hash) = 32 AND octet_length(large_hash) = 32 AND octet_length(small_hash) = 32),
  CONSTRAINT photo_is_as_large_as_kept CHECK (width BETWEEN 1 AND 2048 AND height BETWEEN 1 AND 2048),
  CONSTRAINT photo_is_withdrawn_with_a_reason CHECK (num_nulls(withdrawn_at, withdrawn_by, withdrawn_reason) IN (0, 3))
);
CREATE INDEX photo_of_a_batch_newest_first ON photo (programme_id, batch_id, taken_on DESC, id DESC) WHERE withdrawn_at IS NULL AND batch_id IS NOT NULL;
CREATE INDEX photo_of_a_donor_tree_newest_first ON photo (programme_id, donor_tree_id, taken_on DESC, id DESC) WHERE withdrawn_at IS NULL AND donor_tree_id IS NOT NULL;
CREATE INDEX photo_of_a_place_newest_first ON photo (programme_id, place_id, taken_on DESC, id DESC) WHERE withdrawn_at IS NULL AND place_id IS NOT NULL;
-- Who else names a picture that is about to be removed.
CREATE INDEX photo_by_large_picture ON photo (programme_id, large_hash) WHERE withdrawn_at IS NULL;
CREATE INDEX photo_by_small_picture ON photo (programme_id, small_hash) WHERE withdrawn_at IS NULL;

CALL guard_rows_of('photo', 'SELECT, INSERT, UPDATE');
CALL hide_from_partners('photo');
CREATE POLICY shows_where_to_those_with_the_grant ON photo AS RESTRICTIVE FOR SELECT TO sprigline_app
  USING (NOT shows_where OR (SELECT sees_exact_places()));
