import { Injectable } from '@nestjs/common';
import type { News, NewsDay, NewsEntry, NewsQuery } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';

/** More do not fit a glance. */
const DAYS_TOLD = 7;

/**
 * Days since the moment up to which the caller has looked, the last fortnight if they never said so. Counted by
 * receipt, since that is what is new to them; the day in which the moment lies counts what came after it.
 */
const DAYS = `
WITH mine AS (
  SELECT p.zone::text AS zone, l.until AS seen, coalesce(l.until, present_time() - interval '14 days') AS since
  FROM programme p LEFT JOIN last_look l ON l.programme_id = $1 AND l.person_id = $2 WHERE p.id = $1
), kinds AS (
  SELECT (e.received_at AT TIME ZONE m.zone)::date AS day, e.kind, count(*)::int AS n FROM mine m JOIN entry e ON e.programme_id = $1 AND e.received_at > m.since GROUP BY 1, 2
), made AS (
  SELECT (a.at AT TIME ZONE m.zone)::date AS day, count(*)::int AS trips FROM mine m JOIN audit a ON a.programme_id = $1 AND a.at > m.since AND a.act = 'trip.made' GROUP BY 1
), sheets AS (
  SELECT (s.uploaded_at AT TIME ZONE m.zone)::date AS day, count(*)::int AS sheets FROM mine m JOIN import_sheet s ON s.programme_id = $1 AND s.uploaded_at > m.since GROUP BY 1
), days AS (
  SELECT day FROM kinds UNION SELECT day FROM made UNION SELECT day FROM sheets
)
SELECT d.day, coalesce(sum(k.n), 0)::int AS entries, coalesce(max(t.trips), 0)::int AS trips, coalesce(max(s.sheets), 0)::int AS sheets,
  coalesce(json_agg(json_build_object('kind', k.kind, 'n', k.n) ORDER BY k.n DESC, k.kind) FILTER (WHERE k.kind IS NOT NULL), '[]') AS kinds
FROM days d LEFT JOIN kinds k USING (day) LEFT JOIN made t USING (day) LEFT JOIN sheets s USING (day) GROUP BY d.day ORDER BY d.day DESC`;

const HEAD = `
SELECT to_char(l.until AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') AS "seenUntil", to_char(present_time() AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') AS "asOf"
FROM programme p LEFT JOIN last_look l ON l.programme_id = $1 AND l.person_id = $2 WHERE p.id = $1`;

/** Later entries of a second look never move the mark back. */
const SEEN = `
INSERT INTO last_look (programme_id, person_id, until) VALUES ($1, $2, least($3::timestamptz, present_time()))
ON CONFLICT (programme_id, person_id) DO UPDATE SET until = greatest(last_look.until, EXCLUDED.until)`;

const ENTRIES = `
SELECT e.id, e.kind, e.observed_on AS "observedOn", to_char(e.received_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') AS "receivedAt",
  e.body AS said, e.note, e.door, wrote.name AS "writtenBy", seen.name AS "seenBy", p.name AS "placeName",
  (SELECT json_build_object('id', t.batch_id, 'label', (SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.batch_id = t.batch_id ORDER BY l.given_at DESC, l.code LIMIT 1))
    FROM entry_touch t WHERE t.programme_id = $1 AND t.entry_id = e.id ORDER BY t.batch_id LIMIT 1) AS batch
FROM programme g JOIN entry e ON e.programme_id = $1
  AND e.received_at >= ($2::date::timestamp AT TIME ZONE g.zone::text) AND e.received_at < (($2::date + 1)::timestamp AT TIME ZONE g.zone::text)
LEFT JOIN person wrote ON wrote.programme_id = $1 AND wrote.id = e.written_by LEFT JOIN person seen ON seen.programme_id = $1 AND seen.id = e.seen_by
LEFT JOIN place p ON p.programme_id = $1 AND p.id = e.place_id
WHERE g.id = $1 AND ($3::timestamptz IS NULL OR (e.received_at, e.id) < ($3, $4::uuid))
ORDER BY e.received_at DESC, e.id DESC LIMIT $5`;

@Injectable()
export class NewsQueries {
  async since(sql: UnitOfWork, { programmeId, personId }: Caller): Promise<News> {
    const head = await sql.one<{ seenUntil: string | null; asOf: string }>(HEAD, [programmeId, personId]);
    const days = await sql.rows<NewsDay & Record<string, unknown>>(DAYS, [programmeId, personId]);
    return { ...head, entries: days.reduce((sum, { entries }) => sum + entries, 0), days: days.slice(0, DAYS_TOLD), moreDays: Math.max(0, days.length - DAYS_TOLD) };
  }

  async seen(sql: UnitOfWork, { programmeId, personId }: Caller, until: string): Promise<void> {
    await sql.rows(SEEN, [programmeId, personId, until]);
  }

  /** What arrived on a day, the newest first. */
  async entries(sql: UnitOfWork, programmeId: string, { day, after, limit }: NewsQuery): Promise<Part<NewsEntry>> {
    const [at, id] = keysAfter(after, 2) ?? [];
    const rows = await sql.rows<NewsEntry & Record<string, unknown>>(ENTRIES, [programmeId, day, at ?? null, id ?? null, limit + 1]);
    return partOf(rows, limit, (entry) => [entry.receivedAt, entry.id]);
  }
}
