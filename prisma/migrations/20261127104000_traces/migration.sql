-- What a trace is followed by: the lot of a medium, and plants cut from nursery plants.
--
-- Locks: brief, on tray_filling; sticking while its index is built. Undo by hand: drop the
-- indexes, and the column if nothing else uses it.

ALTER TABLE tray_filling ADD COLUMN IF NOT EXISTS medium_lot words;
CREATE INDEX tray_filling_by_lot ON tray_filling (programme_id, lower(medium_lot)) WHERE medium_lot IS NOT NULL;
CREATE INDEX tray_filling_by_place ON tray_filling (programme_id, place_id, filled_on);
CREATE INDEX sticking_by_batch_cut_from ON sticking (programme_id, from_batch_id) WHERE from_batch_id IS NOT NULL;
CREATE INDEX bundle_by_trip ON bundle (programme_id, trip_id);
