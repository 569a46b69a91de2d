-- A backup holds counters as well as rows: without this the keeper's dump stops at the counter of
-- changes that wait.
--
-- Locks: none. Undo by hand: revoke it.

GRANT SELECT ON SEQUENCE change_waiting_nth_seq TO sprigline_keeper;
