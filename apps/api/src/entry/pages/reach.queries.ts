import type { NewEntry } from '@sprigline/contract';
import type { UnitOfWork } from '../../database/unit-of-work.ts';

const REACH = `
WITH RECURSIVE hold AS (
  SELECT * FROM json_to_recordset($2) AS h(id uuid, place uuid, donor uuid, trip uuid, lot text)
), inside AS (
  SELECT h.id AS hold_id, h.place AS place_id FROM hold h WHERE h.place IS NOT NULL
  UNION SELECT i.hold_id, p.id FROM inside i JOIN place p ON p.programme_id = $1 AND p.parent_id = i.place_id
), reached AS (
  SELECT i.hold_id, s.batch_id FROM inside i JOIN batch_state s ON s.programme_id = $1 AND s.place_id = i.place_id AND s.balance > 0
  UNION SELECT h.id, s.batch_id FROM hold h
    JOIN sticking st ON st.programme_id = $1
      AND (st.donor_tree_id = h.donor OR st.bundle_id IN (SELECT id FROM bundle WHERE programme_id = $1 AND trip_id = h.trip))
    JOIN batch b ON b.programme_id = $1 AND b.sticking_id = st.id
    JOIN batch_state s ON s.programme_id = $1 AND s.batch_id = b.id AND s.balance > 0
  UNION SELECT h.id, s.batch_id FROM hold h JOIN batch b ON b.programme_id = $1 AND b.medium = h.lot
    JOIN batch_state s ON s.programme_id = $1 AND s.batch_id = b.id AND s.balance > 0
  -- Whatever stood in a tray while it was filled from that lot.
  UNION SELECT h.id, s.batch_id FROM hold h JOIN tray_filling f ON f.programme_id = $1 AND lower(f.medium_lot) = lower(h.lot)
    JOIN stay y ON y.programme_id = $1 AND y.place_id = f.place_id AND (y.to_day IS NULL OR y.to_day > f.filled_on OR y.from_day >= f.filled_on)
      AND y.from_day < coalesce((SELECT min(n.filled_on) FROM tray_filling n WHERE n.programme_id = $1 AND n.place_id = f.place_id AND n.filled_on > f.filled_on), 'infinity')
    JOIN batch_state s ON s.programme_id = $1 AND s.batch_id = y.batch_id AND s.balance > 0
  -- What was held with the same thing before, wherever it stands now: a release must reach it.
  UNION SELECT h.id, held.batch_id::uuid FROM hold h JOIN entry e ON e.programme_id = $1 AND e.kind = 'held'
      AND (e.place_id = h.place OR e.donor_tree_id = h.donor OR e.trip_id = h.trip OR e.body ->> 'mediumLot' = h.lot)
    CROSS JOIN LATERAL jsonb_array_elements_text(e.body -> 'batchIds') AS held(batch_id)
)
SELECT hold_id AS "holdId", array_agg(batch_id::text ORDER BY batch_id) AS batches FROM reached GROUP BY hold_id`;

/** Per hold or release of a place, donor tree, trip or lot of medium: the batches that it reaches now. */
export async function reachOfHolds(sql: UnitOfWork, programmeId: string, entries: readonly NewEntry[]): Promise<Map<string, readonly string[]>> {
  const holds = entries.flatMap(({ id, saying }) =>
    (saying.kind === 'held' || saying.kind === 'released') && saying.batchId === undefined && saying.batchIds === undefined
      ? [{ id, place: saying.placeId, donor: saying.donorTreeId, trip: saying.tripId, lot: saying.mediumLot }]
      : [],
  );
  if (holds.length === 0) return new Map();

  const rows = await sql.rows<{ holdId: string; batches: string[] }>(REACH, [programmeId, JSON.stringify(holds)]);
  return new Map(holds.map(({ id }) => [id, rows.find(({ holdId }) => holdId === id)?.batches ?? []]));
}
