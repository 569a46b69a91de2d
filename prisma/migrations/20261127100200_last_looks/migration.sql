-- Up to where somebody has looked at what changed. Said by themselves, never by opening a page.
--
-- Locks: new table only. Undo by hand: drop last_look.

CREATE TABLE last_look (
  programme_id uuid           NOT NULL,
  person_id    uuid           NOT NULL,
  -- What arrived until then has been looked at.
  until        timestamptz(3) NOT NULL,
  CONSTRAINT last_look_pkey PRIMARY KEY (programme_id, person_id),
  CONSTRAINT last_look_is_by_a_person FOREIGN KEY (programme_id, person_id) REFERENCES person (programme_id, id) ON DELETE RESTRICT
);
CALL guard_rows_of('last_look', 'SELECT, INSERT, UPDATE');
CALL hide_from_partners('last_look');
