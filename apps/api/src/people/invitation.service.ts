import { Inject, Injectable } from '@nestjs/common';
import type { Invitation, MadeLink, MakeInvitation } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { TrailQueries } from '../audit/trail.queries.ts';
import { SETTINGS } from '../config/settings.token.ts';
import type { Settings } from '../config/settings.ts';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';
import { linkHash, linkTo, linkToken } from '../http/link.ts';
import { InvitationQueries } from './invitation.queries.ts';
import { refuseUnlessManages } from './may-manage.ts';
import { PeopleQueries } from './people.queries.ts';

@Injectable()
export class InvitationService {
  constructor(
    private readonly database: Database,
    private readonly queries: InvitationQueries,
    private readonly people: PeopleQueries,
    private readonly trail: TrailQueries,
    @Inject(SETTINGS) private readonly settings: Settings,
  ) {}

  list(caller: Caller): Promise<Invitation[]> {
    return this.database.inTransaction(caller, (sql) => this.queries.list(sql, caller.programmeId));
  }

  /**
   * Makes an invitation and answers the link, which nobody can read out of the database.
   *
   * @throws DomainError `person/not-yours-to-manage`, `person/unknown`, `person/has-account`, `invitation/id-reused`
   */
  make(caller: Caller, invitation: MakeInvitation): Promise<MadeLink> {
    refuseUnlessManages(caller.role, invitation.role);
    const { programmeId, personId } = caller;
    const token = linkToken(this.settings.secret, 'invitation', programmeId, invitation.id);

    return this.database.inTransaction(caller, async (sql) => {
      if (await this.trail.isNew(sql, caller, 'invitation', invitation, 'invitation/id-reused')) {
        if (invitation.personId) await this.#refuseUnlessOnlyAName(sql, programmeId, invitation.personId);
        await this.queries.make(sql, programmeId, personId, linkHash(token), invitation);
      }
      const made = (await this.queries.one(sql, programmeId, invitation.id)) ?? unknown();
      return { id: invitation.id, link: linkTo(this.settings.baseUrl, 'invitation', token), expiresAt: made.expires_at.toISOString() };
    });
  }

  /** @throws DomainError `invitation/unknown`, `invitation/used`, `person/not-yours-to-manage` */
  withdraw(caller: Caller, id: string): Promise<void> {
    return this.database.inTransaction(caller, async (sql) => {
      const { role, used_at: usedAt } = (await this.queries.one(sql, caller.programmeId, id)) ?? unknown();
      refuseUnlessManages(caller.role, role);
      if (usedAt) throw new DomainError('invitation/used', 'remove the person instead');
      await this.queries.withdraw(sql, caller.programmeId, id);
      await this.trail.note(sql, caller, { act: 'withdrawn', kind: 'invitation', id });
    });
  }

  async #refuseUnlessOnlyAName(sql: UnitOfWork, programmeId: string, id: string): Promise<void> {
    const person = await this.people.one(sql, programmeId, id);
    if (!person) throw new DomainError('person/unknown', 'nobody who works here has that id; they may have left');
    if (person.user_id) throw new DomainError('person/has-account', 'change their role instead');
  }
}

function unknown(): never {
  throw new DomainError('invitation/unknown', 'nothing here has that id');
}
