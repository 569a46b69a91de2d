-- Stickings that closed and gave a rooted plant tell how long their species takes; those that still
-- wait stand before them in the order of days, and need not be looked up one by one.
--
-- Locks: tally while its index is built. Undo by hand: drop the index.

CREATE INDEX tally_of_closed_cuttings ON tally (programme_id, sticking_id) WHERE stage = 'cutting' AND here = 0 AND gone_on > 0;
