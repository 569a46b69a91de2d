import { Injectable } from '@nestjs/common';
import type { Cell, Pack, PackedBooks, PackedEntry, PlacePack, Programme } from '@sprigline/contract';
import { cellHalfDiagonalM } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import { ENTRY_COLUMNS, type EntryRow, entryOfRow } from '../entry/history.queries.ts';
import type { Caller } from '../http/caller.ts';

/** A phone replays what it holds at every tap; beyond so many batches it waits for the server's word. */
const MOST_BOOKS = 500;

const at = `to_char(present_time() AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`;
const list = (rows: string): string => `(SELECT coalesce(json_agg(x), '[]') FROM (${rows}) x)`;

/** Cuttings that were not stuck for so many days are not stuck any more. */
const BUNDLE_WAITS_DAYS = 200;
const MOST_BUNDLES = 500;

const BUNDLES = `
  SELECT u.id, t.went_on AS "tripDay", d.label AS "donorTree", x.scientific_name AS taxon, s.name AS stand, u.cuttings, coalesce(k.stuck, 0) AS stuck
  FROM trip t
  JOIN bundle u ON u.programme_id = $1 AND u.trip_id = t.id
  JOIN donor_tree d ON d.programme_id = $1 AND d.id = u.donor_tree_id
  JOIN taxon x ON x.programme_id = $1 AND x.id = d.taxon_id
  JOIN stand s ON s.programme_id = $1 AND s.id = d.stand_id
  LEFT JOIN LATERAL (
    SELECT sum(m.n)::int AS stuck FROM sticking g
    JOIN batch b ON b.programme_id = $1 AND b.sticking_id = g.id
    JOIN movement m ON m.programme_id = $1 AND m.batch_id = b.id AND m.effect = 'stuck'
    WHERE g.programme_id = $1 AND g.bundle_id = u.id
  ) k ON true
  WHERE t.programme_id = $1 AND t.went_on >= (present_time() AT TIME ZONE $3)::date - ${BUNDLE_WAITS_DAYS} AND u.cuttings > coalesce(k.stuck, 0)
  ORDER BY t.went_on DESC, d.label, u.id LIMIT ${MOST_BUNDLES}`;

const RECIPES = `
  SELECT v.id AS "versionId", r.name, v.version, v.medium FROM recipe r
  JOIN LATERAL (SELECT id, version, medium FROM recipe_version WHERE programme_id = $1 AND recipe_id = r.id ORDER BY version DESC LIMIT 1) v ON true
  WHERE r.programme_id = $1 ORDER BY r.name, r.id`;

/** A label on a tray is on the place, and one on its plants comes with their walk. */
const LABELS = `
  SELECT l.code, CASE WHEN l.donor_tree_id IS NULL THEN 'place' ELSE 'donorTree' END AS "is", coalesce(l.donor_tree_id, l.place_id) AS id
  FROM label l WHERE l.programme_id = $1 AND (l.donor_tree_id IS NOT NULL OR l.place_id IN (SELECT id FROM open_place)) ORDER BY l.code`;

const WHOLE = `
WITH RECURSIVE open_place AS (
  SELECT id, name, kind, parent_id, ARRAY[lpad(walk_order::text, 6, '0') || name::text || id::text] AS way FROM place
  WHERE programme_id = $1 AND parent_id IS NULL AND closed_on IS NULL
  UNION ALL
  SELECT p.id, p.name, p.kind, p.parent_id, o.way || (lpad(p.walk_order::text, 6, '0') || p.name::text || p.id::text)
  FROM place p JOIN open_place o ON p.programme_id = $1 AND p.parent_id = o.id WHERE p.closed_on IS NULL
), here AS (
  SELECT place_id, count(*)::int AS batches FROM batch_state WHERE programme_id = $1 AND balance > 0 GROUP BY place_id
)
SELECT ${at} AS at,
  (SELECT json_build_object('id', g.id, 'handle', g.handle, 'name', g.name, 'zone', g.zone, 'seasonStartsIn', g.season_starts_in, 'rootedMeans', g.rooted_means,
    'readyMeans', g.ready_means, 'gradeCheckEveryDays', g.grade_check_every_days, 'isDemo', g.is_demo) FROM programme g WHERE g.id = $1) AS programme,
  (SELECT name FROM person WHERE programme_id = $1 AND id = $2) AS "myName",
  ${list(`SELECT id, name FROM person WHERE programme_id = $1 AND left_at IS NULL AND partner_id IS NULL ORDER BY name, id`)} AS people,
  ${list(`SELECT w.id, w.day, p.name AS place, w.tasks FROM workday w LEFT JOIN place p ON p.programme_id = $1 AND p.id = w.place_id
    WHERE w.programme_id = $1 AND w.day BETWEEN (present_time() AT TIME ZONE $3)::date - 7 AND (present_time() AT TIME ZONE $3)::date + 1 ORDER BY w.day DESC, w.id`)} AS workdays,
  ${list(`SELECT o.id, o.name, o.kind, o.parent_id AS "parentId", coalesce(h.batches, 0) AS batches FROM open_place o LEFT JOIN here h ON h.place_id = o.id ORDER BY o.way`)} AS places,
  ${list(`SELECT id, name, CASE WHEN cell_latitude IS NOT NULL AND cell_longitude IS NOT NULL AND cell_degrees IS NOT NULL
    THEN json_build_object('latitude', cell_latitude, 'longitude', cell_longitude, 'degrees', cell_degrees) END AS cell FROM stand WHERE programme_id = $1 ORDER BY name, id`)} AS stands,
  ${list(`SELECT id, label, stand_id AS "standId", taxon_id AS "taxonId", state FROM donor_tree WHERE programme_id = $1 ORDER BY label, id`)} AS "donorTrees",
  ${list(`SELECT id, scientific_name AS "scientificName", common_name AS "commonName" FROM taxon WHERE programme_id = $1 ORDER BY scientific_name, id`)} AS taxa,
  ${list(BUNDLES)} AS bundles,
  ${list(RECIPES)} AS recipes,
  ${list(LABELS)} AS labels`;

const BOOKS = `
WITH said AS (
  SELECT batch_id, entry_id AS id FROM entry_touch WHERE programme_id = $1 AND batch_id = ANY ($2)
  UNION
  SELECT t.batch_id, c.id FROM entry_touch t, LATERAL (SELECT id FROM entry WHERE programme_id = $1 AND corrects_id = t.entry_id OFFSET 0) c
  WHERE t.programme_id = $1 AND t.batch_id = ANY ($2)
)
SELECT json_build_object('id', b.id, 'stage', b.stage, 'stickingId', b.sticking_id, 'openingEntryId', b.opening_entry_id, 'openingPlaceId', b.opening_place_id) AS batch,
  ${list(`SELECT e.* FROM said, LATERAL (SELECT ${ENTRY_COLUMNS} FROM entry e WHERE e.programme_id = $1 AND e.id = said.id OFFSET 0) e
    WHERE said.batch_id = b.id AND NOT EXISTS (SELECT FROM waiting_entry w WHERE w.programme_id = $1 AND w.entry_id = said.id)`)} AS entries
FROM unnest($2::uuid[]) WITH ORDINALITY AS asked (id, at) JOIN batch b ON b.programme_id = $1 AND b.id = asked.id ORDER BY asked.at`;

const LABELS_OF_WALK = `
SELECT ${at} AS now, ${list(`SELECT code, batch_id AS "batchId" FROM label WHERE programme_id = $1 AND batch_id = ANY ($2) ORDER BY code`)} AS labels`;

interface WholeRow extends Omit<Pack, 'me' | 'seal' | 'stands'>, Record<string, unknown> {
  readonly stands: readonly { readonly id: string; readonly name: string; readonly cell: Omit<Cell, 'halfDiagonalM'> | null }[];
  readonly programme: Programme;
  readonly myName: string;
}

interface BooksRow extends Record<string, unknown> {
  readonly batch: { readonly [field in keyof PackedBooks['batch']]: PackedBooks['batch'][field] | null };
  readonly entries: readonly EntryRow[];
}

@Injectable()
export class PackQueries {
  constructor(private readonly database: Database) {}

  async whole(caller: Caller): Promise<Omit<Pack, 'seal'>> {
    const { programmeId, personId, role, zone } = caller;
    const { myName, stands, ...pack } = await this.database.inTransaction(caller, (sql) => sql.one<WholeRow>(WHOLE, [programmeId, personId, zone]));
    return { ...pack, stands: stands.map(({ cell, ...stand }) => ({ ...stand, cell: cell && withHalfDiagonal(cell) })), me: { personId, name: myName, role } };
  }

  /** @param batches in walking order */
  async booksOf(caller: Caller, batches: readonly string[]): Promise<Omit<PlacePack, 'round'>> {
    return this.database.inTransaction(caller, async (sql) => {
      const rows = await sql.rows<BooksRow>(BOOKS, [caller.programmeId, batches.slice(0, MOST_BOOKS)]);
      const { now, labels } = await sql.one<{ now: string; labels: PlacePack['labels'] }>(LABELS_OF_WALK, [caller.programmeId, batches]);
      return { at: now, books: rows.map(booksOfRow), labels };
    });
  }
}

const withHalfDiagonal = (cell: Omit<Cell, 'halfDiagonalM'>): Cell => ({ ...cell, halfDiagonalM: Math.round(cellHalfDiagonalM(cell.latitude, cell.degrees)) });

const booksOfRow = ({ batch: { stickingId, ...batch }, entries }: BooksRow): PackedBooks => ({
  // The columns besides the sticking are never empty.
  batch: { ...(batch as Omit<PackedBooks['batch'], 'stickingId'>), stickingId: stickingId ?? undefined },
  entries: entries.map(packed),
});

/** Without author, note and hour of receipt. */
function packed(row: EntryRow): PackedEntry {
  const { id, observedOn, minute, workdayId, line, receivedOn, door, clockUnsure, authorUnverified, said } = entryOfRow(row);
  return { id, observedOn, minute, workdayId, line, receivedOn, door, clockUnsure, authorUnverified, saying: said };
}
