-- How a place is kept, from day to day, and what a thermometer said there.
--
-- Locks: new tables only. Undo by hand: drop both.

-- It holds for all that lies in the place, until the next one there, or until one of a place further in.
CREATE TABLE regime (
  programme_id uuid           NOT NULL,
  id           uuid           NOT NULL,
  place_id     uuid           NOT NULL,
  -- It ends on the day from which the next one of that place holds.
  from_day     date           NOT NULL,
  -- Of lamps, a day; empty: no lamps.
  light_hours  numeric(4,2),
  -- To what it is heated; empty: not heated.
  heat_c       numeric(4,1),
  -- What keeps the air moving or moist; empty: nothing.
  air          text,
  -- Lid, fleece, shade cloth; empty: uncovered.
  cover        text,
  note         text,
  told_by      uuid           NOT NULL,
  written_at   timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  CONSTRAINT regime_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT regime_is_of_a_place FOREIGN KEY (programme_id, place_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT regime_is_told_by_a_person FOREIGN KEY (programme_id, told_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT regime_begins_once_a_day_at_a_place UNIQUE (programme_id, place_id, from_day),
  CONSTRAINT regime_light_is_within_a_day CHECK (light_hours > 0 AND light_hours <= 24),
  CONSTRAINT regime_heat_is_of_a_nursery CHECK (heat_c BETWEEN -20 AND 50),
  CONSTRAINT regime_air_is_known CHECK (air IN ('air', 'mist', 'both'))
);
CALL guard_rows_of('regime');
CALL hide_from_partners('regime');

-- One look at a thermometer or hygrometer, by a person or a logger.
CREATE TABLE climate_reading (
  programme_id     uuid           NOT NULL,
  id               uuid           NOT NULL,
  place_id         uuid           NOT NULL,
  taken_at         timestamptz(3) NOT NULL,
  temperature_c    numeric(5,2),
  humidity_percent numeric(4,1),
  told_by          uuid           NOT NULL,
  -- The session or key that brought it.
  delivered_by     words          NOT NULL,
  written_at       timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  -- A wrong one stays, and is counted no more.
  set_aside_at     timestamptz(3),
  set_aside_by     uuid,
  set_aside_reason text,
  CONSTRAINT climate_reading_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT climate_reading_is_at_a_place FOREIGN KEY (programme_id, place_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT climate_reading_is_told_by_a_person FOREIGN KEY (programme_id, told_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT climate_reading_is_set_aside_by_a_person FOREIGN KEY (programme_id, set_aside_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT climate_reading_says_something CHECK (num_nonnulls(temperature_c, humidity_percent) > 0),
  CONSTRAINT climate_reading_temperature_is_on_earth CHECK (temperature_c BETWEEN -60 AND 80),
  CONSTRAINT climate_reading_humidity_is_a_share CHECK (humidity_percent BETWEEN 0 AND 100),
  CONSTRAINT climate_reading_is_set_aside_with_a_reason CHECK (num_nulls(set_aside_at, set_aside_by, set_aside_reason) IN (0, 3))
);
-- A logger's file that is brought twice is read once.
CREATE UNIQUE INDEX climate_reading_is_one_a_moment_and_place ON climate_reading (programme_id, place_id, taken_at) WHERE set_aside_at IS NULL;
CALL guard_rows_of('climate_reading', 'SELECT, INSERT, UPDATE');
CALL hide_from_partners('climate_reading');
