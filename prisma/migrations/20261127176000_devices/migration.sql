-- Browsers that log without a signal, and how many entries were only on them when they were last
-- heard. It is about entries that may be stuck, so nothing is kept of what was looked at or where.
--
-- What a device says of itself is a claim: no entry depends on it, and losing all of it loses none.
--
-- Locks: new table only. Undo by hand: drop it.

CREATE TABLE device (
  programme_id      uuid           NOT NULL,
  -- Made by the browser, once.
  id                uuid           NOT NULL,
  -- Such as "Bench tablet", where somebody gave it one.
  name              words,
  -- Who was signed in when it was last heard.
  person_id         uuid           NOT NULL,
  first_heard_at    timestamptz(3) NOT NULL DEFAULT present_time(),
  last_heard_at     timestamptz(3) NOT NULL DEFAULT present_time(),
  -- When it last took a walk along.
  packed_at         timestamptz(3),
  unsent            integer        NOT NULL,
  -- By the clock of the device.
  oldest_unsent_on  date,
  -- Which build keeps it going without a signal; nothing where none does.
  app               words,
  -- Lost, or no longer used: until it is heard again.
  set_aside_at      timestamptz(3),
  set_aside_by      uuid,
  set_aside_reason  text,
  CONSTRAINT device_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT device_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT device_is_used_by_a_person FOREIGN KEY (programme_id, person_id) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT device_is_set_aside_by_a_person FOREIGN KEY (programme_id, set_aside_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT device_says_since_when_something_is_unsent CHECK (unsent >= 0 AND (unsent > 0) = (oldest_unsent_on IS NOT NULL)),
  CONSTRAINT device_is_set_aside_with_a_reason CHECK (num_nulls(set_aside_at, set_aside_by, set_aside_reason) IN (0, 3))
);
CREATE INDEX device_last_heard_first ON device (programme_id, last_heard_at DESC, id);

CALL guard_rows_of('device', 'SELECT, INSERT, UPDATE');
CALL hide_from_partners('device');
