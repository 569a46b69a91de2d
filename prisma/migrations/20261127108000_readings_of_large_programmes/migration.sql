-- What readings of one stand, and traces of one donor tree, need so as not to look at all others.
--
-- Locks: sticking_candidate while its index is built. Undo by hand: drop the index.

CREATE INDEX sticking_candidate_by_donor_tree ON sticking_candidate (programme_id, donor_tree_id);
