-- Incidents and treatments are few among entries, and asked for by their days.
--
-- Locks: writes of entries wait while the indexes are made. Undo by hand: drop them.

CREATE INDEX entry_of_incidents ON entry (programme_id, observed_on) WHERE kind = 'incident';
CREATE INDEX entry_of_treatments ON entry (programme_id, observed_on) WHERE kind = 'treated';
-- A correction may say that something was at another place.
CREATE INDEX entry_replaced_at_place ON entry (programme_id, (body #>> '{instead,saying,placeId}')) WHERE kind = 'replaced';
