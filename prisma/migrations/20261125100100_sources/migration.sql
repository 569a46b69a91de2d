-- Where cuttings come from: taxa, stands, donor trees, permissions, trips, bundles.
-- Exact positions, trip notes and permissions stand in tables of their own,
-- which the policies open only to the grant *see exact places*.
--
-- Locks: new tables only. Undo by hand: drop the tables below.

CREATE TABLE taxon (
  programme_id     uuid     NOT NULL,
  id               uuid     NOT NULL,
  scientific_name  words    NOT NULL,
  common_name      text,
  -- Chapman 2020: 1 withheld, 2 0.1 degree, 3 0.01, 4 0.001; 0 not sensitive.
  sensitivity      smallint NOT NULL DEFAULT 2,
  CONSTRAINT taxon_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT taxon_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT taxon_name_is_used_once UNIQUE (programme_id, scientific_name),
  CONSTRAINT taxon_sensitivity_is_a_class CHECK (sensitivity BETWEEN 0 AND 4)
);

CREATE TABLE stand (
  programme_id uuid     NOT NULL,
  id           uuid     NOT NULL,
  name         words    NOT NULL,
  partner_id   uuid,
  -- The stricter of the taxon's and the stand's class holds.
  sensitivity  smallint NOT NULL DEFAULT 0,
  cell_latitude  numeric(9,6),
  cell_longitude numeric(9,6),
  -- Side of the cell in degrees: 0.1, 0.01 or 0.001. Empty: withheld.
  cell_degrees   numeric(4,3),
  note         text,
  CONSTRAINT stand_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT stand_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT stand_is_on_a_partners_land FOREIGN KEY (programme_id, partner_id) REFERENCES partner (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT stand_name_is_used_once UNIQUE (programme_id, name),
  CONSTRAINT stand_sensitivity_is_a_class CHECK (sensitivity BETWEEN 0 AND 4),
  CONSTRAINT stand_cell_is_whole CHECK (num_nulls(cell_latitude, cell_longitude, cell_degrees) IN (0, 3))
);

CREATE TABLE donor_tree (
  programme_id   uuid  NOT NULL,
  id             uuid  NOT NULL,
  label          words NOT NULL,
  stand_id       uuid  NOT NULL,
  taxon_id       uuid  NOT NULL,
  -- Rounded to 50 m: the exact elevation would give the place away.
  elevation_band_m integer,
  age_class      text,
  estimated_age_years integer,
  sex            text  NOT NULL DEFAULT 'unknown',
  state          text  NOT NULL DEFAULT 'standing',
  state_seen_on  date,
  -- Donor trees known or taken to be one clone share a group.
  clone_group_id uuid,
  cell_latitude  numeric(9,6),
  cell_longitude numeric(9,6),
  cell_degrees   numeric(4,3),
  note           text,
  CONSTRAINT donor_tree_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT donor_tree_stands_in_a_stand FOREIGN KEY (programme_id, stand_id) REFERENCES stand (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT donor_tree_is_of_a_taxon FOREIGN KEY (programme_id, taxon_id) REFERENCES taxon (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT donor_tree_label_is_used_once UNIQUE (programme_id, label),
  CONSTRAINT donor_tree_age_class_is_known CHECK (age_class IN ('juvenile', 'young', 'mature', 'old')),
  CONSTRAINT donor_tree_age_is_positive CHECK (estimated_age_years > 0),
  CONSTRAINT donor_tree_sex_is_known CHECK (sex IN ('female', 'male', 'both', 'unknown')),
  CONSTRAINT donor_tree_state_is_known CHECK (state IN ('standing', 'notSeen', 'dead', 'unknown')),
  CONSTRAINT donor_tree_elevation_is_a_band CHECK (elevation_band_m % 50 = 0),
  CONSTRAINT donor_tree_cell_is_whole CHECK (num_nulls(cell_latitude, cell_longitude, cell_degrees) IN (0, 3))
);
CREATE INDEX donor_tree_by_stand ON donor_tree (programme_id, stand_id);

-- The only table with positions as measured. WGS 84 degrees, metres.
CREATE TABLE exact_place (
  programme_id  uuid         NOT NULL,
  id            uuid         NOT NULL,
  donor_tree_id uuid,
  stand_id      uuid,
  latitude      numeric(9,6) NOT NULL,
  longitude     numeric(9,6) NOT NULL,
  uncertainty_m integer,
  elevation_m   integer,
  directions    text,
  CONSTRAINT exact_place_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT exact_place_is_of_a_donor_tree FOREIGN KEY (programme_id, donor_tree_id) REFERENCES donor_tree (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT exact_place_is_of_a_stand FOREIGN KEY (programme_id, stand_id) REFERENCES stand (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT exact_place_is_of_one_thing CHECK (num_nonnulls(donor_tree_id, stand_id) = 1),
  CONSTRAINT exact_place_latitude_is_on_earth CHECK (latitude BETWEEN -90 AND 90),
  CONSTRAINT exact_place_longitude_is_on_earth CHECK (longitude BETWEEN -180 AND 180),
  CONSTRAINT exact_place_uncertainty_is_positive CHECK (uncertainty_m > 0)
);
CREATE UNIQUE INDEX exact_place_is_told_once_a_donor_tree ON exact_place (programme_id, donor_tree_id) WHERE donor_tree_id IS NOT NULL;
CREATE UNIQUE INDEX exact_place_is_told_once_a_stand ON exact_place (programme_id, stand_id) WHERE stand_id IS NOT NULL;

CREATE TABLE permission (
  programme_id uuid  NOT NULL,
  id           uuid  NOT NULL,
  granted_by   words NOT NULL,
  land         words NOT NULL,
  stand_id     uuid,
  taxon_id     uuid,
  -- Cuttings allowed in all; empty: no limit told.
  quota        integer,
  valid_from   date  NOT NULL,
  valid_until  date,
  terms        text,
  document     text,
  plants_owed_back integer NOT NULL DEFAULT 0,
  CONSTRAINT permission_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT permission_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT permission_is_for_a_stand FOREIGN KEY (programme_id, stand_id) REFERENCES stand (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT permission_is_for_a_taxon FOREIGN KEY (programme_id, taxon_id) REFERENCES taxon (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT permission_quota_is_positive CHECK (quota > 0),
  CONSTRAINT permission_owes_no_negative_plants CHECK (plants_owed_back >= 0),
  CONSTRAINT permission_ends_after_it_begins CHECK (valid_until >= valid_from)
);

CREATE TABLE trip (
  programme_id  uuid  NOT NULL,
  id            uuid  NOT NULL,
  went_on       date  NOT NULL,
  stand_id      uuid  NOT NULL,
  permission_id uuid,
  led_by        uuid,
  people        smallint,
  CONSTRAINT trip_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT trip_went_to_a_stand FOREIGN KEY (programme_id, stand_id) REFERENCES stand (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT trip_uses_a_permission FOREIGN KEY (programme_id, permission_id) REFERENCES permission (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT trip_is_led_by_a_person FOREIGN KEY (programme_id, led_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT trip_has_people CHECK (people > 0)
);

CREATE TABLE trip_note (
  programme_id uuid  NOT NULL,
  trip_id      uuid  NOT NULL,
  note         words NOT NULL,
  CONSTRAINT trip_note_pkey PRIMARY KEY (programme_id, trip_id),
  CONSTRAINT trip_note_is_of_a_trip FOREIGN KEY (programme_id, trip_id) REFERENCES trip (programme_id, id) ON DELETE RESTRICT
);

CREATE TABLE bundle (
  programme_id  uuid    NOT NULL,
  id            uuid    NOT NULL,
  trip_id       uuid    NOT NULL,
  donor_tree_id uuid    NOT NULL,
  cuttings      integer NOT NULL,
  -- Metres above the ground at which they were cut.
  height_m      numeric(4,1),
  shoot         text,
  foliage       text,
  base          text,
  length_cm     numeric(4,1),
  CONSTRAINT bundle_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT bundle_is_of_a_trip FOREIGN KEY (programme_id, trip_id) REFERENCES trip (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT bundle_is_of_a_donor_tree FOREIGN KEY (programme_id, donor_tree_id) REFERENCES donor_tree (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT bundle_has_cuttings CHECK (cuttings > 0),
  CONSTRAINT bundle_height_is_not_negative CHECK (height_m >= 0),
  CONSTRAINT bundle_shoot_is_known CHECK (shoot IN ('top', 'side')),
  CONSTRAINT bundle_foliage_is_known CHECK (foliage IN ('juvenile', 'changing', 'adult')),
  CONSTRAINT bundle_base_is_known CHECK (base IN ('straight', 'heel', 'mallet')),
  CONSTRAINT bundle_length_is_positive CHECK (length_cm > 0)
);
CREATE INDEX bundle_by_donor_tree ON bundle (programme_id, donor_tree_id);
