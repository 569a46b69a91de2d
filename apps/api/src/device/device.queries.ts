import { type Device, DEVICE_SILENT_AFTER_HOURS, type TellDevice } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';

/** Browsers that nobody cleared away pile up over the years; those heard last matter. */
const MOST = 300;

/** Heard again, it is put aside no longer: somebody has it in their hands. */
const HEARD = `
  INSERT INTO device (programme_id, id, name, person_id, unsent, oldest_unsent_on, app, packed_at)
  VALUES ($1, $2, $3, $4, $5, $6, $7, CASE WHEN $8 THEN present_time() END)
  ON CONFLICT (programme_id, id) DO UPDATE SET name = excluded.name, person_id = excluded.person_id, unsent = excluded.unsent, oldest_unsent_on = excluded.oldest_unsent_on,
    app = excluded.app, packed_at = coalesce(excluded.packed_at, device.packed_at), last_heard_at = present_time(), set_aside_at = NULL, set_aside_by = NULL, set_aside_reason = NULL`;

export async function hear(sql: UnitOfWork, { programmeId, personId }: Caller, id: string, { name, unsent, oldestUnsentOn, app, hasPacked }: TellDevice): Promise<void> {
  await sql.rows(HEARD, [programmeId, id, name, personId, unsent, oldestUnsentOn, app, hasPacked]);
}

const moment = (column: string): string => `to_char(${column} AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`;

/** Packed, and nothing heard since; or something unsent. */
const MAY_HOLD_ENTRIES = '(d.unsent > 0 OR d.packed_at >= d.last_heard_at)';

/** Heard, and yet something does not go out: it was refused, or nobody is signed in there. Its day is told by the phone's own clock and zone, so a day of grace. */
const HOLDS_OLD_ENTRIES = `(d.unsent > 0 AND d.oldest_unsent_on < (present_time() AT TIME ZONE 'UTC')::date - 1)`;

const KNOWN = `
  SELECT d.id, d.name, w.name AS person, ${moment('d.first_heard_at')} AS "firstHeardAt", ${moment('d.last_heard_at')} AS "lastHeardAt", ${moment('d.packed_at')} AS "packedAt",
    d.unsent, d.oldest_unsent_on AS "oldestUnsentOn", d.app,
    coalesce(${MAY_HOLD_ENTRIES} AND d.set_aside_at IS NULL AND d.last_heard_at < present_time() - make_interval(hours => ${DEVICE_SILENT_AFTER_HOURS}), false) AS "isSilent",
    coalesce(${HOLDS_OLD_ENTRIES} AND d.set_aside_at IS NULL, false) AS "isStuck",
    CASE WHEN d.set_aside_at IS NOT NULL THEN json_build_object('at', ${moment('d.set_aside_at')}, 'by', a.name, 'reason', d.set_aside_reason) END AS "setAside"
  FROM device d JOIN person w ON w.programme_id = $1 AND w.id = d.person_id LEFT JOIN person a ON a.programme_id = $1 AND a.id = d.set_aside_by
  WHERE d.programme_id = $1 AND ($2::uuid IS NULL OR d.person_id = $2)
  ORDER BY "isSilent" DESC, "isStuck" DESC, d.unsent > 0 DESC, d.last_heard_at DESC, d.id LIMIT ${MOST}`;

/** Silent ones first. @param personId only theirs; everybody's when left out */
export function devices(sql: UnitOfWork, programmeId: string, personId: string | undefined): Promise<Device[]> {
  return sql.rows<Device & Record<string, unknown>>(KNOWN, [programmeId, personId ?? null]);
}

/** The first reason stands. @returns nothing where there is no such device */
export function setAside(sql: UnitOfWork, { programmeId, personId }: Caller, id: string, reason: string): Promise<{ isFirst: boolean } | undefined> {
  return sql.maybe<{ isFirst: boolean }>(
    `UPDATE device d SET set_aside_at = coalesce(d.set_aside_at, present_time()), set_aside_by = coalesce(d.set_aside_by, $3), set_aside_reason = coalesce(d.set_aside_reason, $4)
     FROM (SELECT id, set_aside_at IS NULL AS first FROM device WHERE programme_id = $1 AND id = $2 FOR UPDATE) AS before
     WHERE d.programme_id = $1 AND d.id = before.id RETURNING before.first AS "isFirst"`,
    [programmeId, id, personId, reason],
  );
}
