import { Injectable } from '@nestjs/common';
import type { AddPerson, ChangePerson, Person } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { TrailQueries } from '../audit/trail.queries.ts';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import { refuseIfStale } from '../http/etag.ts';
import { refuseUnlessManages } from './may-manage.ts';
import { PeopleQueries, tellPerson } from './people.queries.ts';

@Injectable()
export class PeopleService {
  constructor(
    private readonly database: Database,
    private readonly queries: PeopleQueries,
    private readonly trail: TrailQueries,
  ) {}

  /** Volunteers are told the names of the programme's own people, to say who saw what, and nothing more. */
  async list(caller: Caller): Promise<Person[]> {
    const rows = await this.database.inTransaction(caller, (sql) => this.queries.present(sql, caller.programmeId));
    if (caller.role !== 'volunteer') return rows.map(tellPerson);
    return rows.filter(({ role }) => role !== 'partner').map(({ id, name }) => ({ id, name }));
  }

  /** @throws DomainError `person/unknown` */
  one(caller: Caller, id: string): Promise<Person> {
    return this.database.inTransaction(caller, async (sql) => tellPerson((await this.queries.one(sql, caller.programmeId, id)) ?? unknown()));
  }

  /** Adds somebody known by name only. */
  add(caller: Caller, { id, name }: AddPerson): Promise<Person> {
    return this.database.inTransaction(caller, async (sql) => {
      if (await this.trail.isNew(sql, caller, 'person', { id, name }, 'person/id-reused')) await this.queries.add(sql, caller.programmeId, id, name);
      return tellPerson((await this.queries.one(sql, caller.programmeId, id)) ?? unknown());
    });
  }

  /**
   * Changes name, role or the grant *see exact places*.
   *
   * @throws DomainError `person/not-yours-to-manage`, `person/no-account`, `person/last-owner`, `http/version-stale`
   */
  change(caller: Caller, id: string, change: ChangePerson, seen: string): Promise<Person> {
    return this.database.inTransaction(caller, async (sql) => {
      const row = (await this.queries.one(sql, caller.programmeId, id, true)) ?? unknown();
      const earlier = tellPerson(row);
      refuseIfStale(seen, earlier);
      refuseUnlessManages(caller.role, row.role, change.role ?? row.role);
      if (change.role !== undefined && row.role === null) throw new DomainError('person/no-account', 'invite them first: the invitation gives them a role');
      if (change.role !== undefined && row.role === 'partner') throw new DomainError('person/of-a-partner', 'remove them, then invite them into the programme itself');

      const later = tellPerson(await this.queries.change(sql, caller.programmeId, id, change));
      await this.trail.note(sql, caller, { act: 'changed', kind: 'person', id }, { before: earlier, after: later });
      return later;
    });
  }

  /**
   * Removes somebody, or lets somebody leave: effective with their next request.
   *
   * @throws DomainError `person/not-yours-to-manage`, `person/last-owner`
   */
  remove(caller: Caller, id: string): Promise<void> {
    return this.database.inTransaction(caller, async (sql) => {
      const row = await this.queries.one(sql, caller.programmeId, id, true);
      if (caller.role === 'volunteer' && id !== caller.personId) throw new DomainError('http/not-allowed', 'ask a coordinator');
      if (!row) throw unknownError();
      if (id !== caller.personId) refuseUnlessManages(caller.role, row.role);
      await this.queries.remove(sql, caller.programmeId, id);
      await this.trail.note(sql, caller, { act: 'removed', kind: 'person', id }, { role: row.role });
    });
  }
}

const unknownError = () => new DomainError('person/unknown', 'nobody who works here has that id; they may have left');

function unknown(): never {
  throw unknownError();
}
