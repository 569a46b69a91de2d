import { Injectable } from '@nestjs/common';
import { Key, type MakeKey } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';

const LIST = `
  SELECT k.id, k.name, k.start, k.scopes, maker.name AS "madeBy", k.made_at AS "madeAt", k.expires_at AS "expiresAt", k.last_used_at AS "lastUsedAt",
    CASE WHEN q.id IS NOT NULL THEN json_build_object('id', q.id, 'name', q.name) END AS partner,
    CASE WHEN k.revoked_at IS NOT NULL THEN 'revoked' WHEN k.expires_at <= now() THEN 'expired'
      WHEN q.until < (now() AT TIME ZONE g.zone)::date THEN 'ended' ELSE 'open' END AS state
  FROM key k
  JOIN programme g ON g.id = k.programme_id
  JOIN person maker ON maker.programme_id = k.programme_id AND maker.id = k.made_by
  LEFT JOIN partner q ON q.programme_id = k.programme_id AND q.id = k.partner_id
  WHERE k.programme_id = $1 ORDER BY k.made_at DESC, k.id DESC LIMIT 500`;

/** The name under which a key's entries stand comes with it, and is of the same partner. */
const MAKE = `
  WITH writer AS (
    INSERT INTO person (programme_id, id, name, role, partner_id)
    SELECT $1, $3, $4, CASE WHEN $5::uuid IS NOT NULL THEN 'partner'::role END, $5
    WHERE NOT EXISTS (SELECT FROM key WHERE programme_id = $1 AND id = $2)
    RETURNING id
  )
  INSERT INTO key (programme_id, id, person_id, name, partner_id, hash, start, scopes, made_by, expires_at)
  SELECT $1, $2, writer.id, $4, $5, $6, $7, $8, $9, now() + $10 * interval '1 day' FROM writer
  RETURNING expires_at`;

const REVOKE = `
  WITH held AS (SELECT id, revoked_at FROM key WHERE programme_id = $1 AND id = $2 FOR UPDATE)
  UPDATE key k SET revoked_at = coalesce(k.revoked_at, now()), revoked_by = coalesce(k.revoked_by, $3)
  FROM held WHERE k.programme_id = $1 AND k.id = held.id RETURNING held.revoked_at IS NULL AS "isNew"`;

interface Row extends Record<string, unknown> {
  scopes: string;
  madeAt: Date;
  expiresAt: Date;
  lastUsedAt: Date | null;
}

@Injectable()
export class KeyQueries {
  /** The newest first. */
  async list(sql: UnitOfWork, programmeId: string): Promise<Key[]> {
    const rows = await sql.rows<Row>(LIST, [programmeId]);
    return rows.map((row) => Key.parse({
      ...row,
      scopes: row.scopes.split(' '),
      madeAt: row.madeAt.toISOString(),
      expiresAt: row.expiresAt.toISOString(),
      lastUsedAt: row.lastUsedAt?.toISOString() ?? null,
    }));
  }

  /** @returns when it ends; nothing when there is a key with that id */
  async make(sql: UnitOfWork, programmeId: string, asked: MakeKey, made: { hash: Buffer; start: string; personId: string; madeBy: string }): Promise<Date | undefined> {
    const { id, name, partnerId, scopes, days } = asked;
    const values = [programmeId, id, made.personId, name, partnerId ?? null, made.hash, made.start, [...new Set(scopes)].sort().join(' '), made.madeBy, days];
    return (await sql.maybe<{ expires_at: Date }>(MAKE, values))?.expires_at;
  }

  /** Revoking twice is revoking once. */
  async revoke(sql: UnitOfWork, programmeId: string, id: string, by: string): Promise<{ isNew: boolean } | undefined> {
    return sql.maybe<{ isNew: boolean }>(REVOKE, [programmeId, id, by]);
  }
}
