-- Of which lot the medium of a tray is, so that a bad bag can be followed; and whether
-- plants stood in the tray while it was filled, by somebody's word.
--
-- Locks: brief, on tray_filling. Undo by hand: drop the two columns.

ALTER TABLE tray_filling ADD COLUMN IF NOT EXISTS medium_lot words;
ALTER TABLE tray_filling ADD COLUMN plants_stayed boolean NOT NULL DEFAULT false;
