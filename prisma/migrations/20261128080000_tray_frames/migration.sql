-- Where a tray lies in its portrait: two corners, and the side on which its label is, from which
-- its rows are counted. So the rows of the books can be drawn over the picture.
--
-- Locks: new table only. Undo by hand: drop it.

CREATE TABLE tray_frame (
  programme_id uuid           NOT NULL,
  photo_id     uuid           NOT NULL,
  -- In per cent of the picture's width and height, from its top left corner.
  left_at      smallint       NOT NULL,
  top_at       smallint       NOT NULL,
  right_at     smallint       NOT NULL,
  bottom_at    smallint       NOT NULL,
  label_side   text           NOT NULL,
  told_by      uuid           NOT NULL,
  told_at      timestamptz(3) NOT NULL DEFAULT present_time(),
  CONSTRAINT tray_frame_pkey PRIMARY KEY (programme_id, photo_id),
  CONSTRAINT tray_frame_is_of_a_photo FOREIGN KEY (programme_id, photo_id) REFERENCES photo (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT tray_frame_is_told_by_a_person FOREIGN KEY (programme_id, told_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT tray_frame_lies_in_the_picture CHECK (left_at >= 0 AND top_at >= 0 AND right_at <= 100 AND bottom_at <= 100),
  CONSTRAINT tray_frame_has_an_inside CHECK (right_at - left_at >= 10 AND bottom_at - top_at >= 10),
  CONSTRAINT tray_frame_has_its_label_on_a_side CHECK (label_side IN ('top', 'right', 'bottom', 'left'))
);

CALL guard_rows_of('tray_frame', 'SELECT, INSERT, UPDATE');
CALL hide_from_partners('tray_frame');
