-- Labels of donor trees sort as people count: D2 before D10. Two labels are still the same only
-- if they are written the same, so whatever is unique stays so, and a part of a list knows where it ended.
--
-- Locks: donor_tree, while its indexes on the label are made anew. Undo by hand:
-- ALTER TABLE donor_tree ALTER COLUMN label TYPE words; then drop the collation.

CREATE COLLATION as_people_count (provider = icu, locale = 'und-u-kn-true');

ALTER TABLE donor_tree ALTER COLUMN label TYPE words COLLATE as_people_count;
