import { Injectable } from '@nestjs/common';
import type { Me, NewAccount, Role } from '@sprigline/contract';
import { generateRandomString } from 'better-auth/crypto';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { hashPassword } from './passwords.ts';

interface ProgrammeRow extends Record<string, unknown> {
  programme_id: string;
  handle: string;
  name: string;
  is_demo: boolean;
  person_id: string;
  role: Role;
}

/** An account about to be opened: its password is hashed before any transaction begins. */
export interface HashedAccount {
  readonly userId: string;
  readonly name: string;
  readonly email: string;
  readonly passwordHash: string;
}

/** Accounts as the application may see them: by functions, each with a secret of the caller's. */
@Injectable()
export class AccountQueries {
  async hashed({ name, email, password }: NewAccount): Promise<HashedAccount> {
    return { userId: generateRandomString(32), name, email, passwordHash: await hashPassword(password) };
  }

  readonly passwordHash = hashPassword;

  /** @param linkHash of the invitation or set-up link, without which no account can be opened */
  async open(sql: UnitOfWork, linkHash: Buffer, { userId, name, email, passwordHash }: HashedAccount): Promise<void> {
    await sql.rows('SELECT open_account($1, $2, $3, $4, $5)', [linkHash, userId, name, email, passwordHash]);
  }

  async me(sql: UnitOfWork, sessionId: string): Promise<Me> {
    const account = await sql.one<{ name: string; email: string }>('SELECT name, email FROM my_account($1)', [sessionId]);
    return { ...account, programmes: await this.programmes(sql, sessionId) };
  }

  /** The programmes in which the holder of a session works. */
  async programmes(sql: UnitOfWork, sessionId: string): Promise<Me['programmes']> {
    const rows = await sql.rows<ProgrammeRow>('SELECT * FROM my_programmes($1)', [sessionId]);
    return rows.map(({ programme_id: id, handle, name, is_demo: isDemo, person_id: personId, role }) => ({ id, handle, name, isDemo, personId, role }));
  }
}
