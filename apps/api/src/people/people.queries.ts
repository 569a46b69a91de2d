import { Injectable } from '@nestjs/common';
import type { ChangePerson, Person, Role } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';

const COLUMNS = 'id, name, user_id, role, partner_id, sees_exact, joined_at';

export interface PersonRow extends Record<string, unknown> {
  id: string;
  name: string;
  user_id: string | null;
  role: Role | null;
  partner_id: string | null;
  sees_exact: boolean;
  joined_at: Date;
}

/** What a coordinator is told of somebody. */
export const tellPerson = (row: PersonRow): Person => ({
  id: row.id,
  name: row.name,
  hasAccount: row.user_id !== null,
  role: row.role,
  partnerId: row.partner_id,
  seesExact: row.sees_exact,
  joinedAt: row.joined_at.toISOString(),
});

/** The names under which keys write are nobody's. */
const SOMEBODY = 'NOT EXISTS (SELECT FROM key k WHERE k.programme_id = person.programme_id AND k.person_id = person.id)';

@Injectable()
export class PeopleQueries {
  /** Everybody who works here now, by name. */
  async present(sql: UnitOfWork, programmeId: string): Promise<PersonRow[]> {
    return sql.rows(`SELECT ${COLUMNS} FROM person WHERE programme_id = $1 AND left_at IS NULL AND ${SOMEBODY} ORDER BY name, id`, [programmeId]);
  }

  /** Somebody who has not left. @param hold until the transaction ends */
  async one(sql: UnitOfWork, programmeId: string, id: string, hold = false): Promise<PersonRow | undefined> {
    return sql.maybe(`SELECT ${COLUMNS} FROM person WHERE programme_id = $1 AND id = $2 AND left_at IS NULL AND ${SOMEBODY} ${hold ? 'FOR UPDATE' : ''}`, [programmeId, id]);
  }

  async add(sql: UnitOfWork, programmeId: string, id: string, name: string): Promise<void> {
    await sql.rows('INSERT INTO person (programme_id, id, name) VALUES ($1, $2, $3)', [programmeId, id, name]);
  }

  async change(sql: UnitOfWork, programmeId: string, id: string, { name, role, seesExact }: ChangePerson): Promise<PersonRow> {
    return sql.one(
      `UPDATE person SET name = coalesce($3, name), role = coalesce($4, role), sees_exact = coalesce($5, sees_exact)
       WHERE programme_id = $1 AND id = $2 RETURNING ${COLUMNS}`,
      [programmeId, id, name, role, seesExact],
    );
  }

  /** They work here no longer, and what was sent to them opens nothing. */
  async remove(sql: UnitOfWork, programmeId: string, id: string): Promise<void> {
    await sql.rows('UPDATE person SET left_at = now() WHERE programme_id = $1 AND id = $2', [programmeId, id]);
    await sql.rows(
      'UPDATE invitation SET withdrawn_at = now() WHERE programme_id = $1 AND person_id = $2 AND used_at IS NULL AND withdrawn_at IS NULL',
      [programmeId, id],
    );
  }
}
