import type { Climate, NewClimateReading } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { type Caller, deliveredBy } from '../http/caller.ts';

/** As the database keeps it: to a hundredth of a degree, to a tenth of a per cent. */
export interface ReadingRow extends Record<string, unknown> {
  readonly id: string;
  readonly placeId: string;
  readonly takenAt: string;
  readonly temperatureC: number | null;
  readonly humidityPercent: number | null;
}

const TOLD = `json_to_recordset($2) AS t(nth int, id uuid, "placeId" uuid, "takenAt" timestamptz(3), "temperatureC" numeric(5,2), "humidityPercent" numeric(4,1))`;

const ADD = `
  INSERT INTO climate_reading (programme_id, id, place_id, taken_at, temperature_c, humidity_percent, told_by, delivered_by)
  SELECT $1, t.id, t."placeId", t."takenAt", t."temperatureC", t."humidityPercent", $3, $4
  FROM ${TOLD} JOIN place p ON p.programme_id = $1 AND p.id = t."placeId"
  WHERE t."takenAt" <= present_time() + interval '10 minutes'
  ORDER BY t.nth ON CONFLICT DO NOTHING RETURNING id`;

const FATES = `
  SELECT t.id, p.id IS NOT NULL AS "hasPlace", t."takenAt" > present_time() + interval '10 minutes' AS "isFuture",
    own.id IS NOT NULL AS "hasId",
    own.id IS NOT NULL AND (own.place_id, own.taken_at) = (t."placeId", t."takenAt")
      AND (own.temperature_c, own.humidity_percent) IS NOT DISTINCT FROM (t."temperatureC", t."humidityPercent") AS "isSame",
    other.id IS NOT NULL AND (other.temperature_c, other.humidity_percent) IS NOT DISTINCT FROM (t."temperatureC", t."humidityPercent") AS "isSameMoment"
  FROM ${TOLD} LEFT JOIN place p ON p.programme_id = $1 AND p.id = t."placeId"
  LEFT JOIN climate_reading own ON own.programme_id = $1 AND own.id = t.id
  LEFT JOIN climate_reading other ON other.programme_id = $1 AND other.place_id = t."placeId" AND other.taken_at = t."takenAt" AND other.set_aside_at IS NULL AND other.id <> t.id
  ORDER BY t.nth`;

export interface Fate extends Record<string, unknown> {
  readonly id: string;
  readonly hasPlace: boolean;
  readonly isFuture: boolean;
  readonly hasId: boolean;
  readonly isSame: boolean;
  readonly isSameMoment: boolean;
}

/** Adds what is new, and tells of each why it was not. Two round trips, however many readings. */
export async function addReadings(sql: UnitOfWork, by: Caller, readings: readonly NewClimateReading[]): Promise<{ added: Set<string>; fates: Fate[] }> {
  const told = JSON.stringify(readings.map((reading, nth) => ({ nth, ...reading })));
  const added = await sql.rows<{ id: string }>(ADD, [by.programmeId, told, by.personId, deliveredBy(by)]);
  const fates = await sql.rows<Fate>(FATES, [by.programmeId, told]);
  return { added: new Set(added.map(({ id }) => id)), fates };
}

const WITHIN = `c.programme_id = $1 AND c.place_id = $2 AND c.taken_at >= ($4::date::timestamp AT TIME ZONE $3) AND c.taken_at < (($5::date + 1)::timestamp AT TIME ZONE $3)`;

const SPREAD = (column: string, digits: number) =>
  `CASE WHEN count(c.${column}) > 0 THEN json_build_object('lowest', min(c.${column}), 'mean', round(avg(c.${column}), ${digits}), 'highest', max(c.${column})) END`;

const DAYS = `
  SELECT (c.taken_at AT TIME ZONE $3)::date AS day, count(*)::int AS readings, ${SPREAD('temperature_c', 1)} AS "temperatureC", ${SPREAD('humidity_percent', 0)} AS "humidityPercent"
  FROM climate_reading c WHERE ${WITHIN} AND c.set_aside_at IS NULL GROUP BY 1 ORDER BY 1`;

/** So many of the last ones are shown one by one. */
const LATEST = 20;

const ONE_BY_ONE = `
  SELECT c.id, to_char(c.taken_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"') AS "takenAt", c.temperature_c AS "temperatureC", c.humidity_percent AS "humidityPercent",
    w.name AS "toldBy", c.set_aside_reason AS "setAside"
  FROM climate_reading c JOIN person w ON w.programme_id = $1 AND w.id = c.told_by WHERE ${WITHIN}`;

export interface Range {
  readonly from: string;
  readonly until: string;
}

export async function climateAt(sql: UnitOfWork, programmeId: string, placeId: string, zone: string, { from, until }: Range): Promise<Pick<Climate, 'days' | 'latest'>> {
  const values = [programmeId, placeId, zone, from, until];
  const days = await sql.rows<Climate['days'][number]>(DAYS, values);
  const latest = await sql.rows<Climate['latest'][number]>(`${ONE_BY_ONE} ORDER BY c.taken_at DESC, c.id LIMIT ${LATEST}`, values);
  return { days, latest };
}

export function everyReading(sql: UnitOfWork, programmeId: string, placeId: string, zone: string, { from, until }: Range): Promise<Climate['latest']> {
  return sql.rows<Climate['latest'][number]>(`${ONE_BY_ONE} ORDER BY c.taken_at, c.id`, [programmeId, placeId, zone, from, until]);
}
