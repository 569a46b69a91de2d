-- The last closed stickings of a species are found past all that still wait, in the index alone and in
-- its order; and the trees of a clone group by the group, not by looking at every tree.
--
-- Locks: sticking and donor_tree while their indexes are built. Undo by hand: drop both, and build the
-- first on (programme_id, taxon_id, stuck_on).

DROP INDEX sticking_by_taxon_and_day;
CREATE INDEX sticking_by_taxon_and_day ON sticking (programme_id, taxon_id, stuck_on DESC, id);
CREATE INDEX donor_tree_by_clone_group ON donor_tree (programme_id, clone_group_id) WHERE clone_group_id IS NOT NULL;
