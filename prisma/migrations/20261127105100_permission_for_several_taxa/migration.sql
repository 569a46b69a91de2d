-- A permission names several species, as the papers do. Those told so far are carried over.
--
-- Locks: permission, briefly. Undo by hand: add the column again, fill it from the
-- new table where there is one row a permission, and drop the table.

CREATE TABLE permission_taxon (
  programme_id  uuid NOT NULL,
  permission_id uuid NOT NULL,
  taxon_id      uuid NOT NULL,
  CONSTRAINT permission_taxon_pkey PRIMARY KEY (programme_id, permission_id, taxon_id),
  CONSTRAINT permission_taxon_is_of_a_permission FOREIGN KEY (programme_id, permission_id) REFERENCES permission (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT permission_is_for_taxa FOREIGN KEY (programme_id, taxon_id) REFERENCES taxon (programme_id, id) ON DELETE RESTRICT
);

INSERT INTO permission_taxon (programme_id, permission_id, taxon_id)
  SELECT programme_id, id, taxon_id FROM permission WHERE taxon_id IS NOT NULL;
ALTER TABLE permission DROP COLUMN taxon_id;

CALL guard_rows_of('permission_taxon');
CALL hide_from_partners('permission_taxon');
CALL hide_without_the_grant('permission_taxon');
