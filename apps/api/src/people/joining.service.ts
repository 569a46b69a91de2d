import { Injectable } from '@nestjs/common';
import type { InvitationSeen, Joined, NewAccount, Role } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { v7 as newId } from 'uuid';
import { TrailQueries } from '../audit/trail.queries.ts';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { SignedIn } from '../http/caller.ts';
import { linkHash } from '../http/link.ts';
import { AccountQueries } from '../sign-in/account.queries.ts';
import { InvitationQueries } from './invitation.queries.ts';

interface Found extends Record<string, unknown> {
  programme_id: string;
  id: string;
}

interface Joiner {
  readonly userId: string;
  readonly name: string;
  readonly sessionId?: string;
}

/** The way in, by the link of an invitation. */
@Injectable()
export class JoiningService {
  constructor(
    private readonly database: Database,
    private readonly queries: InvitationQueries,
    private readonly accounts: AccountQueries,
    private readonly trail: TrailQueries,
  ) {}

  /** @throws DomainError `link/closed` */
  async seen(token: string): Promise<InvitationSeen> {
    const found = await this.#found(token);
    return this.database.inTransaction(outside(found), (sql) =>
      sql.one<{ programme: string; role: Role }>(
        'SELECT p.name AS programme, i.role FROM invitation i JOIN programme p ON p.id = i.programme_id WHERE i.programme_id = $1 AND i.id = $2',
        [found.programme_id, found.id],
      ),
    );
  }

  /** @throws DomainError `link/closed`, `sign-in/email-taken` */
  async withNewAccount(token: string, wanted: NewAccount): Promise<Joined> {
    const found = await this.#found(token);
    const account = await this.accounts.hashed(wanted);
    return this.database.inTransaction(outside(found), async (sql) => {
      await this.accounts.open(sql, linkHash(token), account);
      return this.#join(sql, found, account);
    });
  }

  /** @throws DomainError `link/closed`, `invitation/already-member` */
  async withAccount(token: string, { userId, sessionId }: SignedIn): Promise<Joined> {
    const found = await this.#found(token);
    return this.database.inTransaction(outside(found), async (sql) => {
      const { name } = await this.accounts.me(sql, sessionId);
      return this.#join(sql, found, { userId, sessionId, name });
    });
  }

  async #join(sql: UnitOfWork, { programme_id: programmeId, id }: Found, joiner: Joiner): Promise<Joined> {
    const gift = await this.queries.hold(sql, programmeId, id);
    const personId = gift && (await this.queries.join(sql, programmeId, newId(), gift, joiner));
    if (!personId) throw closed();
    await this.queries.use(sql, programmeId, id, personId);
    const doer = { programmeId, personId, ...(joiner.sessionId ? { sessionId: joiner.sessionId } : {}) };
    await this.trail.note(sql, doer, { act: 'accepted', kind: 'invitation', id }, { role: gift.role });
    const { handle } = await sql.one<{ handle: string }>('SELECT handle FROM programme WHERE id = $1', [programmeId]);
    return { programme: handle };
  }

  async #found(token: string): Promise<Found> {
    const found = await this.database.outsideProgrammes((sql) => sql.maybe<Found>('SELECT * FROM living_invitation($1)', [linkHash(token)]));
    if (!found) throw closed();
    return found;
  }
}

const outside = ({ programme_id: programmeId }: Found) => ({ programmeId, seesExact: false });

const closed = () => new DomainError('link/closed', 'ask for a new invitation: this one was used or withdrawn, or has run out');
