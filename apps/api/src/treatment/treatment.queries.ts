import type { PlainSaying, Treatment, TreatmentQuery } from '@sprigline/contract';
import { effectiveEntries } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { ENTRY_COLUMNS, type EntryRow, entryOfRow } from '../entry/history.queries.ts';

type Treated = Extract<PlainSaying, { kind: 'treated' }>;
export type Asked = TreatmentQuery & { readonly from: string; readonly until: string };

/** Treatments of some days, by the day first told or told instead; what is decided by their last version is decided afterwards. */
const ENTRIES = `
WITH root AS (
  SELECT e.id FROM entry e WHERE e.programme_id = $1 AND e.kind = 'treated' AND e.observed_on BETWEEN $2 AND $3
  UNION SELECT c.corrects_id FROM entry c JOIN entry e ON e.programme_id = $1 AND e.id = c.corrects_id AND e.kind = 'treated'
    WHERE c.programme_id = $1 AND c.kind = 'replaced' AND (c.body #>> '{instead,observedOn}')::date BETWEEN $2 AND $3
)
SELECT (SELECT coalesce(json_agg(x), '[]') FROM (SELECT ${ENTRY_COLUMNS} FROM root JOIN entry e ON e.programme_id = $1 AND (e.id = root.id OR e.corrects_id = root.id)
  WHERE NOT EXISTS (SELECT FROM waiting_entry w WHERE w.programme_id = $1 AND w.entry_id = e.id)) x) AS entries`;

/** Names of what was treated. A batch is told with the place where it stood on that day. */
const NAMES = `
WITH RECURSIVE asked AS (SELECT * FROM json_to_recordset($2) AS a(id uuid, batch uuid, place uuid, donor uuid, trip uuid, person uuid, day date)
), stood AS (
  SELECT a.id, coalesce(a.place, (
    SELECT y.place_id FROM stay y WHERE y.programme_id = $1 AND y.batch_id = a.batch AND y.from_day <= a.day ORDER BY y.seq DESC LIMIT 1), (
    SELECT s.place_id FROM batch_state s WHERE s.programme_id = $1 AND s.batch_id = a.batch)) AS place
  FROM asked a
), up AS (
  SELECT stood.id, p.id AS place, p.name::text, p.parent_id, 0 AS step FROM stood JOIN place p ON p.programme_id = $1 AND p.id = stood.place
  UNION ALL SELECT up.id, p.id, p.name::text, p.parent_id, up.step + 1 FROM up JOIN place p ON p.programme_id = $1 AND p.id = up.parent_id
)
SELECT a.id,
  (SELECT json_build_object('id', u.place, 'name', u.name, 'path', (SELECT coalesce(json_agg(o.name ORDER BY o.step DESC), '[]') FROM up o WHERE o.id = a.id AND o.step > 0))
    FROM up u WHERE u.id = a.id AND u.step = 0) AS place,
  ARRAY(SELECT u.place FROM up u WHERE u.id = a.id) AS within,
  (SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.batch_id = a.batch ORDER BY l.given_at DESC, l.code LIMIT 1) AS label,
  coalesce((SELECT label FROM donor_tree WHERE programme_id = $1 AND id = a.donor)::text, (SELECT went_on::text FROM trip WHERE programme_id = $1 AND id = a.trip)) AS other,
  (SELECT name FROM person WHERE programme_id = $1 AND id = a.person) AS "writtenBy"
FROM asked a`;

interface Names extends Record<string, unknown> {
  readonly id: string;
  readonly place: Treatment['place'];
  readonly within: string[];
  readonly label: string | null;
  readonly other: string | null;
  readonly writtenBy: string | null;
}

/** As they stand after their corrections, the first one first. Two round trips. */
export async function treatmentsOf(sql: UnitOfWork, programmeId: string, { from, until, placeId, what }: Asked): Promise<Treatment[]> {
  const { entries } = await sql.one<{ entries: EntryRow[] }>(ENTRIES, [programmeId, from, until]);
  const stored = new Map(entries.map((row) => [row.id, entryOfRow(row)]));
  const standing = effectiveEntries([...stored.values()])
    // It was checked by its contract when it was written; what a correction puts instead is of the same kind.
    .effective.map((entry) => ({ ...entry, said: entry.saying as unknown as Treated, first: stored.get(entry.id) }))
    .filter(({ observedOn, said }) => observedOn >= from && observedOn <= until && (what === undefined || said.what === what));
  const asked = standing.map(({ id, said, observedOn, first }) => ({ id, batch: said.batchId, place: said.placeId, donor: said.donorTreeId, trip: said.tripId, person: first?.writtenBy, day: observedOn }));
  const names = new Map((await sql.rows<Names>(NAMES, [programmeId, JSON.stringify(asked)])).map((row) => [row.id, row]));
  return standing
    .filter(({ id }) => placeId === undefined || names.get(id)?.within.includes(placeId))
    .map(({ id, observedOn, minute, said, first }) => shown({ entryId: id, observedOn, minute: minute ?? null, note: first?.note ?? null }, said, names.get(id)));
}

const shown = (entry: Pick<Treatment, 'entryId' | 'observedOn' | 'minute' | 'note'>, said: Treated, names: Names | undefined): Treatment => ({
  ...entry,
  what: said.what,
  place: names?.place ?? null,
  batch: said.batchId === undefined ? null : { id: said.batchId, label: names?.label ?? null },
  other: said.mediumLot ?? names?.other ?? null,
  product: said.product ?? null,
  registration: said.registration ?? null,
  rate: said.rate ?? null,
  appliedBy: said.appliedBy ?? null,
  reentry: said.reentry ?? null,
  reentryHours: said.reentryHours ?? null,
  writtenBy: names?.writtenBy ?? null,
});
