import { Injectable } from '@nestjs/common';
import type { Key, MadeKey, MakeKey } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { v7 as newId } from 'uuid';
import { TrailQueries } from '../audit/trail.queries.ts';
import { Database } from '../database/database.ts';
import { known } from '../database/known.ts';
import type { Caller } from '../http/caller.ts';
import { keyHash, keyStart, newKey } from '../http/key-format.ts';
import { KeyQueries } from './key.queries.ts';

@Injectable()
export class KeyService {
  constructor(
    private readonly database: Database,
    private readonly queries: KeyQueries,
    private readonly trail: TrailQueries,
  ) {}

  list(caller: Caller): Promise<Key[]> {
    return this.database.inTransaction(caller, (sql) => this.queries.list(sql, caller.programmeId));
  }

  /**
   * Makes a key. It is random and only its hash is kept, so nobody can be told it again,
   * not even by sending the same request twice.
   *
   * @throws DomainError `key/shown-before`, `record/no-such-partner`
   */
  make(caller: Caller, asked: MakeKey): Promise<MadeKey> {
    return this.database.inTransaction(caller, async (sql) => {
      const key = newKey(asked.partnerId ? 'partner' : 'programme');
      const made = { hash: keyHash(key), start: keyStart(key), personId: newId(), madeBy: caller.personId };
      const expiresAt = await this.queries.make(sql, caller.programmeId, asked, made);
      if (!expiresAt) throw new DomainError('key/shown-before', 'revoke that key and make another, with an id of its own');
      const { name, partnerId, scopes } = asked;
      await this.trail.note(sql, caller, { act: 'made', kind: 'key', id: asked.id }, { name, partnerId, scopes });
      return { id: asked.id, key, expiresAt: expiresAt.toISOString() };
    });
  }

  /** @throws DomainError `record/unknown` */
  revoke(caller: Caller, id: string): Promise<void> {
    return this.database.inTransaction(caller, async (sql) => {
      const { isNew } = known(await this.queries.revoke(sql, caller.programmeId, id, caller.personId));
      if (isNew) await this.trail.note(sql, caller, { act: 'revoked', kind: 'key', id });
    });
  }
}
