import { Injectable } from '@nestjs/common';
import { type ChangeProgramme, OpenProgramme, type Programme } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { v7 as newId } from 'uuid';
import { TrailQueries } from '../audit/trail.queries.ts';
import { constraintName } from '../database/constraint-name.ts';
import { Database } from '../database/database.ts';
import type { Caller, SignedIn } from '../http/caller.ts';
import { inOrder, refuseIfStale } from '../http/etag.ts';
import { AccountQueries } from '../sign-in/account.queries.ts';
import { ProgrammeQueries } from './programme.queries.ts';

@Injectable()
export class ProgrammeService {
  constructor(
    private readonly database: Database,
    private readonly queries: ProgrammeQueries,
    private readonly accounts: AccountQueries,
    private readonly trail: TrailQueries,
  ) {}

  one(caller: Caller): Promise<Programme> {
    return this.database.inTransaction(caller, (sql) => this.queries.one(sql, caller.programmeId));
  }

  /**
   * Changes settings.
   *
   * @param seen what If-Match named
   * @throws DomainError `http/version-stale`
   */
  change(caller: Caller, change: ChangeProgramme, seen: string): Promise<Programme> {
    return this.database.inTransaction(caller, async (sql) => {
      const earlier = await this.queries.one(sql, caller.programmeId, true);
      refuseIfStale(seen, earlier);
      const later = await this.queries.change(sql, caller.programmeId, change);
      await this.trail.note(sql, caller, { act: 'changed', kind: 'programme', id: caller.programmeId }, { before: earlier, after: later });
      return later;
    });
  }

  /**
   * Opens another programme on this install, owned by whoever asks.
   *
   * @throws DomainError `programme/not-an-owner` for somebody who owns none yet
   * @throws DomainError `programme/id-reused` when the id stands for another programme
   */
  async open(account: SignedIn, opening: OpenProgramme): Promise<Programme> {
    const me = await this.database.outsideProgrammes((sql) => this.accounts.me(sql, account.sessionId));
    if (!me.programmes.some(({ role }) => role === 'owner')) {
      throw new DomainError('programme/not-an-owner', 'ask an owner of a programme on this install to open it');
    }
    try {
      return await this.#make(account, opening, me.name);
    } catch (error) {
      if (constraintName(error) !== 'programme_pkey') throw error;
      // The same request again, or somebody else's id: only who owns what is there is told which.
      const mine = await this.database.outsideProgrammes((sql) => this.accounts.programmes(sql, account.sessionId));
      if (!mine.some(({ id, role }) => id === opening.id && role === 'owner')) throw error;
      return this.#sameAsBefore(opening);
    }
  }

  async #make({ userId, sessionId }: SignedIn, opening: OpenProgramme, name: string): Promise<Programme> {
    const programmeId = opening.id;
    return this.database.inTransaction({ programmeId, seesExact: false }, async (sql) => {
      const personId = newId();
      await this.queries.make(sql, opening);
      await this.queries.makeOwner(sql, programmeId, { personId, userId, name });
      await this.trail.note(sql, { programmeId, personId, sessionId }, { act: 'made', kind: 'programme', id: programmeId });
      return this.queries.one(sql, programmeId);
    });
  }

  async #sameAsBefore(opening: OpenProgramme): Promise<Programme> {
    const there = await this.database.inTransaction({ programmeId: opening.id, seesExact: false }, (sql) => this.queries.one(sql, opening.id));
    if (inOrder(OpenProgramme.strip().parse(there)) === inOrder(opening)) return there;
    throw new DomainError('programme/id-reused', 'that id was sent before with other content: make a new id for a new programme');
  }
}
