import { Injectable } from '@nestjs/common';
import { DomainError } from '@sprigline/domain';
import type { FastifyRequest } from 'fastify';
import { Database } from '../database/database.ts';
import type { Caller } from './caller.ts';
import { isKey, keyHash } from './key-format.ts';

interface KeyRow extends Record<string, unknown> {
  key_id: string;
  state: 'open' | 'revoked' | 'expired' | 'ended';
  programme_id: string | null;
  person_id: string;
  partner_id: string | null;
  scopes: string;
  zone: string | null;
}

/** What follows `Bearer` in a request, if anything does. A key is never looked for in an address. */
export const keyIn = ({ headers: { authorization } }: FastifyRequest): string | undefined => /^bearer\s+(.*)$/i.exec(authorization ?? '')?.[1]?.trim();

/** Whose key calls, asked of the database at every request: what was revoked a moment ago does not work now. */
@Injectable()
export class KeyLookup {
  constructor(private readonly database: Database) {}

  /**
   * A key of the programme may do what a volunteer may, one of a partner what its
   * people may; both only within their scopes, and neither sees an exact place.
   *
   * @throws DomainError `key/not-a-key` for a typo, with no look at the database
   * @throws DomainError `key/unknown`, `key/closed`, `programme/unknown`
   */
  async caller(key: string, programme: string): Promise<Caller> {
    if (!isKey(key)) throw new DomainError('key/not-a-key', 'send the whole key, as it was shown when it was made');
    const row = await this.database.outsideProgrammes((sql) => sql.maybe<KeyRow>('SELECT * FROM key_calls($1, $2)', [keyHash(key), programme]));
    if (!row) throw new DomainError('key/unknown', 'make a new key in this install');
    if (row.state !== 'open') throw new DomainError('key/closed', WHY[row.state]);
    if (!row.programme_id || !row.zone) throw new DomainError('programme/unknown', 'there is no such programme, or this key is not of it');
    return {
      userId: '',
      sessionId: '',
      key: { id: row.key_id, scopes: row.scopes.split(' ') },
      programmeId: row.programme_id,
      programme,
      personId: row.person_id,
      role: row.partner_id ? 'partner' : 'volunteer',
      partnerId: row.partner_id ?? undefined,
      seesExact: false,
      zone: row.zone,
    };
  }
}

const WHY = {
  revoked: 'it was revoked: ask the coordinator for a new one',
  expired: 'its time is over: ask the coordinator for a new one',
  ended: 'the time of your group in this programme is over: ask its coordinator',
} as const;
