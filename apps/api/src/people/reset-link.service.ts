import { Inject, Injectable } from '@nestjs/common';
import type { MadeLink, ResetLinkSeen } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { TrailQueries } from '../audit/trail.queries.ts';
import { SETTINGS } from '../config/settings.token.ts';
import type { Settings } from '../config/settings.ts';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';
import { linkHash, linkTo, linkToken } from '../http/link.ts';
import { AccountQueries } from '../sign-in/account.queries.ts';
import { refuseUnlessManages } from './may-manage.ts';
import { PeopleQueries } from './people.queries.ts';

interface Found extends Record<string, unknown> {
  programme_id: string;
  id: string;
}

interface Seen extends Record<string, unknown> {
  programme: string;
  name: string;
  person_id: string;
}

/** A forgotten password: a link to copy and hand over, since many installs have no mail server. */
@Injectable()
export class ResetLinkService {
  constructor(
    private readonly database: Database,
    private readonly people: PeopleQueries,
    private readonly accounts: AccountQueries,
    private readonly trail: TrailQueries,
    @Inject(SETTINGS) private readonly settings: Settings,
  ) {}

  /**
   * Whoever holds the link can enter as that person, so it is for those who answer
   * for them in every programme in which the account works.
   *
   * @throws DomainError `person/unknown`, `person/no-account`, `person/not-yours-to-manage`, `person/works-elsewhere-too`
   */
  make(caller: Caller, personId: string, id: string): Promise<MadeLink> {
    const token = linkToken(this.settings.secret, 'reset', caller.programmeId, id);
    return this.database.inTransaction(caller, async (sql) => {
      await this.#refuseUnlessAnswersFor(sql, caller, personId);
      if (await this.trail.isNew(sql, caller, 'reset-link', { id, personId }, 'link/id-reused')) {
        await sql.rows(
          `INSERT INTO reset_link (programme_id, id, person_id, token_hash, made_by, expires_at) VALUES ($1, $2, $3, $4, $5, now() + interval '1 day')`,
          [caller.programmeId, id, personId, linkHash(token), caller.personId],
        );
      }
      const { expires_at: at } = await sql.one<{ expires_at: Date }>('SELECT expires_at FROM reset_link WHERE programme_id = $1 AND id = $2', [caller.programmeId, id]);
      return { id, link: linkTo(this.settings.baseUrl, 'reset', token), expiresAt: at.toISOString() };
    });
  }

  /** @throws DomainError `link/closed` */
  async seen(token: string): Promise<ResetLinkSeen> {
    const found = await this.#found(token);
    const { programme, name } = await this.database.inTransaction(outside(found), (sql) => this.#seen(sql, found));
    return { programme, name };
  }

  /**
   * Sets a new password. The link is used up and all sessions of the account end.
   *
   * @throws DomainError `link/closed`
   */
  async use(token: string, password: string): Promise<void> {
    const found = await this.#found(token);
    const passwordHash = await this.accounts.passwordHash(password);
    await this.database.inTransaction(outside(found), async (sql) => {
      const { used } = await sql.one<{ used: boolean }>('SELECT use_reset_link($1, $2) AS used', [linkHash(token), passwordHash]);
      if (!used) throw closed();
      const { person_id: personId } = await this.#seen(sql, found);
      await this.trail.note(sql, { programmeId: found.programme_id, personId }, { act: 'used', kind: 'reset-link', id: found.id });
    });
  }

  async #refuseUnlessAnswersFor(sql: UnitOfWork, caller: Caller, personId: string): Promise<void> {
    const person = await this.people.one(sql, caller.programmeId, personId);
    if (!person) throw new DomainError('person/unknown', 'nobody who works here has that id; they may have left');
    if (!person.user_id) throw new DomainError('person/no-account', 'they have no password to forget: invite them');
    refuseUnlessManages(caller.role, person.role);
    const { yes } = await sql.one<{ yes: boolean }>('SELECT answers_for($1, $2) AS yes', [caller.userId, person.user_id]);
    if (!yes) throw new DomainError('person/works-elsewhere-too', 'their account works in a programme that you do not manage: whoever runs this install can make the link');
  }

  #seen(sql: UnitOfWork, { programme_id: programmeId, id }: Found): Promise<Seen> {
    return sql.one<Seen>(
      `SELECT g.name AS programme, p.name, p.id AS person_id FROM reset_link r JOIN programme g ON g.id = r.programme_id
       JOIN person p ON p.programme_id = r.programme_id AND p.id = r.person_id WHERE r.programme_id = $1 AND r.id = $2`,
      [programmeId, id],
    );
  }

  async #found(token: string): Promise<Found> {
    const found = await this.database.outsideProgrammes((sql) => sql.maybe<Found>('SELECT * FROM living_reset_link($1)', [linkHash(token)]));
    if (!found) throw closed();
    return found;
  }
}

const outside = ({ programme_id: programmeId }: Found) => ({ programmeId, seesExact: false });

const closed = () => new DomainError('link/closed', 'ask for a new reset link: this one was used, or is older than a day');
