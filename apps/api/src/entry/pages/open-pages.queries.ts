import type { UnitOfWork } from '../../database/unit-of-work.ts';
import type { Author } from '../author.ts';
import type { Named } from '../named-ids.ts';
import { ENTRY_COLUMNS, type EntryRow, type KnownBatch, type KnownRecord, type KnownSticking } from './page-rows.ts';

/** All that has to be known to write some entries, read in one round trip. */
export interface PageRows extends Record<string, unknown> {
  readonly at: string;
  readonly day: string;
  readonly entries: readonly EntryRow[];
  readonly touches: readonly { readonly batch_id: string; readonly entry_id: string }[];
  readonly waiting: readonly { readonly entry_id: string; readonly waits_for_id: string }[];
  readonly batches: readonly KnownBatch[];
  readonly stickings: readonly KnownSticking[];
  readonly records: readonly KnownRecord[];
  readonly labels: readonly string[];
}

const list = (name: string, select: string): string => `(SELECT json_strip_nulls(coalesce(json_agg(x), '[]')) FROM (${select}) x) AS ${name}`;

/** A donor tree's stand may be on a partner's land: that partner may follow its plants. */
const STAND_PARTNERS = `
  ARRAY(SELECT DISTINCT st.partner_id FROM (
      SELECT s.donor_tree_id AS id UNION ALL
      SELECT c.donor_tree_id FROM sticking_candidate c WHERE c.programme_id = $1 AND c.sticking_id = s.id AND s.donor_tree_id IS NULL) AS origin
    CROSS JOIN LATERAL (SELECT stand_id FROM donor_tree WHERE programme_id = $1 AND id = origin.id OFFSET 0) d JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id
    WHERE st.partner_id IS NOT NULL)`;

/**
 * The lateral joins, kept apart by OFFSET 0, make the database look up each id by an index.
 * Left to itself it cannot know how few ids there are, and reads whole tables.
 */
const OPEN = `
WITH RECURSIVE root AS (
  SELECT unnest($2::uuid[]) AS id
  UNION SELECT entry_id FROM entry_touch WHERE programme_id = $1 AND batch_id = ANY ($2)
  UNION SELECT unnest(ARRAY[e.id, coalesce(e.corrects_id, e.id)]) FROM waiting_entry w JOIN entry e ON e.programme_id = $1 AND e.id = w.entry_id
    WHERE w.programme_id = $1 AND w.waits_for_id = ANY ($2)
), line AS (
  SELECT id FROM root
  UNION SELECT c.id FROM root, LATERAL (SELECT id FROM entry WHERE programme_id = $1 AND corrects_id = root.id OFFSET 0) c
), shown AS MATERIALIZED (
  SELECT e.* FROM line, LATERAL (SELECT ${ENTRY_COLUMNS} FROM entry e WHERE e.programme_id = $1 AND e.id = line.id OFFSET 0) e
), standing AS (
  SELECT p.id AS at_id, p.id, p.parent_id, p.kind, p.partner_id FROM (
    SELECT unnest($3::uuid[]) AS id UNION SELECT (body ->> 'placeId')::uuid FROM shown
    UNION SELECT (body #>> '{instead,saying,placeId}')::uuid FROM shown
    UNION SELECT opening_place_id FROM batch WHERE programme_id = $1 AND id = ANY ($2)) AS named,
  LATERAL (SELECT * FROM place WHERE programme_id = $1 AND id = named.id OFFSET 0) p
  UNION ALL
  SELECT s.at_id, p.id, p.parent_id, p.kind, p.partner_id FROM standing s
  JOIN place p ON p.programme_id = $1 AND p.id = s.parent_id WHERE s.partner_id IS NULL
)
SELECT to_char(present_time() AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') AS at,
  to_char(present_time() AT TIME ZONE $5, 'YYYY-MM-DD') AS day,
  ${list('entries', 'SELECT * FROM shown')},
  ${list('touches', 'SELECT t.* FROM root, LATERAL (SELECT batch_id, entry_id FROM entry_touch WHERE programme_id = $1 AND entry_id = root.id OFFSET 0) t')},
  ${list('waiting', 'SELECT w.entry_id, w.waits_for_id FROM waiting_entry w JOIN line ON line.id = w.entry_id WHERE w.programme_id = $1')},
  ${list('batches', `
    SELECT b.id, b.sticking_id AS "stickingId", b.stage, b.parent_id AS "parentId", b.opening_entry_id AS "openingEntryId",
      b.opening_place_id AS "openingPlaceId", b.opened_on AS "openedOn", b.rows, b.container, b.medium,
      ARRAY(SELECT p.partner_id FROM batch_partner p WHERE p.programme_id = $1 AND p.batch_id = b.id AND p.relation = 'stand') AS "standPartners"
    FROM batch b WHERE b.programme_id = $1 AND b.id = ANY ($2)`)},
  ${list('stickings', `
    SELECT s.id, s.opening_entry_id AS "openingEntryId", s.donor_tree_id AS "donorTreeId", s.taxon_id AS "taxonId", s.bundle_id AS "bundleId",
      s.generation, s.stuck_on AS "stuckOn", ${STAND_PARTNERS} AS "standPartners"
    FROM (SELECT unnest($2::uuid[]) AS id UNION SELECT sticking_id FROM batch WHERE programme_id = $1 AND id = ANY ($2)) AS named,
    LATERAL (SELECT * FROM sticking WHERE programme_id = $1 AND id = named.id OFFSET 0) s`)},
  ${list('records', `
    SELECT 'place' AS table, at_id AS id, max(partner_id::text) AS partner_id, max(kind) FILTER (WHERE partner_id IS NOT NULL) AS held_kind,
      NULL AS donor_tree_id, NULL AS taxon_id, false AS gone, false AS desk FROM standing GROUP BY at_id
    UNION ALL SELECT 'bundle', id, NULL, NULL, donor_tree_id::text, NULL, false, false FROM bundle WHERE programme_id = $1 AND id = ANY ($3)
    UNION ALL SELECT 'donor_tree', d.id, st.partner_id::text, NULL, NULL, d.taxon_id::text, false, false
      FROM (SELECT unnest($3::uuid[]) AS id UNION SELECT donor_tree_id FROM bundle WHERE programme_id = $1 AND id = ANY ($3)) AS named,
      LATERAL (SELECT * FROM donor_tree WHERE programme_id = $1 AND id = named.id OFFSET 0) d
      JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id
    UNION ALL SELECT 'person', id, NULL, NULL, NULL, NULL, left_at IS NOT NULL, role IN ('coordinator', 'owner') FROM person WHERE programme_id = $1 AND id = ANY ($3)
    ${['trip', 'recipe_version', 'partner', 'taxon', 'workday']
      .map((table) => `UNION ALL SELECT '${table}', id, NULL, NULL, NULL, NULL, false, false FROM ${table} WHERE programme_id = $1 AND id = ANY ($3)`)
      .join('\n    ')}`)},
  ARRAY(SELECT code::text FROM label WHERE programme_id = $1 AND code = ANY ($4)) AS labels`;

/** Up to so many ids a plan made for any number of them is good enough; making one takes longer than running it. */
const FEW = 100;

export async function openPages(sql: UnitOfWork, { programmeId, zone }: Pick<Author, 'programmeId' | 'zone'>, named: Named): Promise<PageRows> {
  const values = [programmeId, [...named.ledger], [...named.records], [...named.labels], zone];
  const [rows] = await (named.ledger.size > FEW ? sql.rows<PageRows>(OPEN, values) : sql.prepared<PageRows>(OPEN, values));
  if (!rows) throw new Error('opening the pages answers one row, whatever is on them');
  return rows;
}
