-- Where plants stand, and what is done to a cutting when it is stuck.
--
-- Locks: new tables only. Undo by hand: drop the tables below.

-- House > bench > tray, as deep as needed; sites and their plots are places too,
-- so that every plant always stands in exactly one place.
CREATE TABLE place (
  programme_id uuid    NOT NULL,
  id           uuid    NOT NULL,
  parent_id    uuid,
  kind         text    NOT NULL,
  name         words   NOT NULL,
  -- Position in the walking order among its siblings.
  walk_order   integer NOT NULL DEFAULT 0,
  -- A tray's rows, counted from the label.
  rows         smallint,
  partner_id   uuid,
  closed_on    date,
  note         text,
  CONSTRAINT place_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT place_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT place_lies_in_a_place FOREIGN KEY (programme_id, parent_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT place_is_held_by_a_partner FOREIGN KEY (programme_id, partner_id) REFERENCES partner (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT place_name_is_used_once_where_it_lies UNIQUE NULLS NOT DISTINCT (programme_id, parent_id, name),
  CONSTRAINT place_kind_is_known CHECK (kind IN ('house', 'frame', 'ground', 'bench', 'tray', 'site', 'plot', 'partner')),
  CONSTRAINT place_does_not_lie_in_itself CHECK (parent_id <> id),
  CONSTRAINT place_rows_are_positive CHECK (rows > 0)
);
CREATE INDEX place_by_parent ON place (programme_id, parent_id);

-- A tray is a thing: emptied, cleaned and filled anew.
CREATE TABLE tray_filling (
  programme_id uuid  NOT NULL,
  id           uuid  NOT NULL,
  place_id     uuid  NOT NULL,
  filled_on    date  NOT NULL,
  medium       words NOT NULL,
  how_cleaned  text,
  CONSTRAINT tray_filling_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT tray_filling_is_of_a_place FOREIGN KEY (programme_id, place_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT
);

-- What is particular to a place where trees are planted out.
CREATE TABLE site (
  programme_id uuid NOT NULL,
  place_id     uuid NOT NULL,
  land         text,
  cell_latitude  numeric(9,6),
  cell_longitude numeric(9,6),
  cell_degrees   numeric(4,3),
  CONSTRAINT site_pkey PRIMARY KEY (programme_id, place_id),
  CONSTRAINT site_is_a_place FOREIGN KEY (programme_id, place_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT site_cell_is_whole CHECK (num_nulls(cell_latitude, cell_longitude, cell_degrees) IN (0, 3))
);

CREATE TABLE recipe (
  programme_id uuid  NOT NULL,
  id           uuid  NOT NULL,
  name         words NOT NULL,
  CONSTRAINT recipe_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT recipe_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT recipe_name_is_used_once UNIQUE (programme_id, name)
);

-- Never changed: another way of doing it is another version.
CREATE TABLE recipe_version (
  programme_id uuid     NOT NULL,
  id           uuid     NOT NULL,
  recipe_id    uuid     NOT NULL,
  version      smallint NOT NULL,
  hormone      text,
  hormone_ppm  integer,
  hormone_form text,
  medium       text,
  wound        text,
  steps        text,
  made_on      date     NOT NULL,
  CONSTRAINT recipe_version_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT recipe_version_is_of_a_recipe FOREIGN KEY (programme_id, recipe_id) REFERENCES recipe (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT recipe_version_is_numbered_once UNIQUE (programme_id, recipe_id, version),
  CONSTRAINT recipe_version_is_counted_from_one CHECK (version >= 1),
  CONSTRAINT recipe_version_hormone_is_not_negative CHECK (hormone_ppm >= 0),
  CONSTRAINT recipe_version_hormone_form_is_known CHECK (hormone_form IN ('talc', 'quickDip', 'soak', 'gel'))
);

CREATE TABLE workday (
  programme_id uuid  NOT NULL,
  id           uuid  NOT NULL,
  day          date  NOT NULL,
  place_id     uuid,
  tasks        text,
  -- Adults without a name here, and children, who are only ever counted.
  others       smallint NOT NULL DEFAULT 0,
  children     smallint NOT NULL DEFAULT 0,
  hours        numeric(4,1),
  made_by      uuid,
  CONSTRAINT workday_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT workday_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT workday_is_at_a_place FOREIGN KEY (programme_id, place_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT workday_is_made_by_a_person FOREIGN KEY (programme_id, made_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT workday_counts_are_not_negative CHECK (others >= 0 AND children >= 0 AND hours >= 0)
);
