-- What is "now" for everything that is computed from days: what is due, as-of dates, receipts.
--
-- One function, so that all of them agree, and so that a year can be lived through in a test. Nothing
-- but a test sets it; sessions, links and wrong tries keep the real time.
--
-- Locks: none. Undo by hand: DROP FUNCTION present_day(text), present_time().

CREATE FUNCTION present_time() RETURNS timestamptz LANGUAGE sql STABLE
  RETURN coalesce(nullif(current_setting('app.present_time', true), '')::timestamptz, now());

-- Today in a zone, such as 'Europe/London'.
CREATE FUNCTION present_day(zone text) RETURNS date LANGUAGE sql STABLE
  RETURN (present_time() AT TIME ZONE zone)::date;
