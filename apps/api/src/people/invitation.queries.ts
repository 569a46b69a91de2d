import { Injectable } from '@nestjs/common';
import type { Invitation, MakeInvitation, Role } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';

const LIST = `
  SELECT i.id, i.for_name, i.role, i.partner_id, i.person_id, i.sees_exact, maker.name AS made_by, i.made_at, i.expires_at,
    CASE WHEN i.used_at IS NOT NULL THEN 'used' WHEN i.withdrawn_at IS NOT NULL THEN 'withdrawn'
      WHEN i.expires_at <= now() THEN 'expired' ELSE 'open' END AS state
  FROM invitation i JOIN person maker ON maker.programme_id = i.programme_id AND maker.id = i.made_by
  WHERE i.programme_id = $1 ORDER BY i.made_at DESC, i.id DESC LIMIT 200`;

interface Row extends Record<string, unknown> {
  id: string;
  for_name: string;
  role: Role;
  partner_id: string | null;
  person_id: string | null;
  sees_exact: boolean;
  made_by: string;
  made_at: Date;
  expires_at: Date;
  state: Invitation['state'];
}

/** What an invitation gives to whoever accepts it. */
export interface Gift extends Record<string, unknown> {
  role: Role;
  partner_id: string | null;
  person_id: string | null;
  sees_exact: boolean;
}

@Injectable()
export class InvitationQueries {
  /** The last 200, newest first. */
  async list(sql: UnitOfWork, programmeId: string): Promise<Invitation[]> {
    const rows = await sql.rows<Row>(LIST, [programmeId]);
    return rows.map((row) => ({
      id: row.id,
      forName: row.for_name,
      role: row.role,
      partnerId: row.partner_id,
      personId: row.person_id,
      seesExact: row.sees_exact,
      madeBy: row.made_by,
      madeAt: row.made_at.toISOString(),
      expiresAt: row.expires_at.toISOString(),
      state: row.state,
    }));
  }

  async make(sql: UnitOfWork, programmeId: string, madeBy: string, hash: Buffer, invitation: MakeInvitation): Promise<void> {
    const { id, role, partnerId, personId, forName, seesExact, days } = invitation;
    await sql.rows(
      `INSERT INTO invitation (programme_id, id, token_hash, role, partner_id, person_id, for_name, sees_exact, made_by, expires_at)
       VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, now() + $10 * interval '1 day')`,
      [programmeId, id, hash, role, partnerId, personId, forName, seesExact, madeBy, days],
    );
  }

  async one(sql: UnitOfWork, programmeId: string, id: string) {
    return sql.maybe<{ role: Role; expires_at: Date; used_at: Date | null }>(
      'SELECT role, expires_at, used_at FROM invitation WHERE programme_id = $1 AND id = $2 FOR UPDATE',
      [programmeId, id],
    );
  }

  async withdraw(sql: UnitOfWork, programmeId: string, id: string): Promise<void> {
    await sql.rows('UPDATE invitation SET withdrawn_at = coalesce(withdrawn_at, now()) WHERE programme_id = $1 AND id = $2', [programmeId, id]);
  }

  /** Of two who accept at once the second waits here, and finds it used. */
  async hold(sql: UnitOfWork, programmeId: string, id: string): Promise<Gift | undefined> {
    return sql.maybe(
      `SELECT role, partner_id, person_id, sees_exact FROM invitation
       WHERE programme_id = $1 AND id = $2 AND used_at IS NULL AND withdrawn_at IS NULL AND expires_at > now() FOR UPDATE`,
      [programmeId, id],
    );
  }

  async use(sql: UnitOfWork, programmeId: string, id: string, usedBy: string): Promise<void> {
    await sql.rows('UPDATE invitation SET used_at = now(), used_by = $3 WHERE programme_id = $1 AND id = $2', [programmeId, id, usedBy]);
  }

  /** Somebody new, or an account for somebody known by name. Answers nothing when that one has an account or left. */
  async join(sql: UnitOfWork, programmeId: string, personId: string, gift: Gift, who: { userId: string; name: string }): Promise<string | undefined> {
    const { role, partner_id: partnerId, sees_exact: seesExact } = gift;
    const row = gift.person_id
      ? await sql.maybe<{ id: string }>(
          `UPDATE person SET user_id = $3, role = $4, partner_id = $5, sees_exact = $6
           WHERE programme_id = $1 AND id = $2 AND user_id IS NULL AND left_at IS NULL RETURNING id`,
          [programmeId, gift.person_id, who.userId, role, partnerId, seesExact],
        )
      : await sql.maybe<{ id: string }>(
          `INSERT INTO person (programme_id, id, user_id, role, partner_id, sees_exact, name) VALUES ($1, $2, $3, $4, $5, $6, $7) RETURNING id`,
          [programmeId, personId, who.userId, role, partnerId, seesExact, who.name],
        );
    return row?.id;
  }
}
