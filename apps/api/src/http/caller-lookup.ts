import { Inject, Injectable } from '@nestjs/common';
import { DomainError } from '@sprigline/domain';
import type { FastifyRequest } from 'fastify';
import { SETTINGS } from '../config/settings.token.ts';
import type { Settings } from '../config/settings.ts';
import { Database } from '../database/database.ts';
import type { Caller, Role, SignedIn } from './caller.ts';
import { sessionTokenOf } from './session-cookie.ts';

interface CallerRow extends Record<string, unknown> {
  user_id: string;
  session_id: string;
  programme_id: string | null;
  person_id: string | null;
  role: Role | null;
  partner_id: string | null;
  sees_exact: boolean | null;
  zone: string | null;
}

/** Who calls, asked of the database at every request: what was revoked a moment ago does not work now. */
@Injectable()
export class CallerLookup {
  constructor(
    private readonly database: Database,
    @Inject(SETTINGS) private readonly settings: Settings,
  ) {}

  /** @throws DomainError `http/sign-in-first` without a living session */
  async account(request: FastifyRequest): Promise<SignedIn> {
    const row = await this.#row(request, '');
    return { userId: row.user_id, sessionId: row.session_id };
  }

  /**
   * @throws DomainError `http/sign-in-first` without a living session
   * @throws DomainError `programme/unknown` for a programme that is not there, or not theirs: the two look alike
   */
  async caller(request: FastifyRequest, programme: string): Promise<Caller> {
    const row = await this.#row(request, programme);
    if (!row.programme_id || !row.person_id || !row.role || !row.zone) {
      throw new DomainError('programme/unknown', 'there is no such programme, or you do not work in it');
    }
    return {
      userId: row.user_id,
      sessionId: row.session_id,
      programmeId: row.programme_id,
      programme,
      personId: row.person_id,
      role: row.role,
      partnerId: row.partner_id ?? undefined,
      seesExact: row.sees_exact ?? false,
      zone: row.zone,
    };
  }

  async #row(request: FastifyRequest, programme: string): Promise<CallerRow> {
    const token = sessionTokenOf(request.headers.cookie, this.settings);
    const row = token && (await this.database.outsideProgrammes((sql) => sql.maybe<CallerRow>('SELECT * FROM who_calls($1, $2)', [token, programme])));
    if (!row) throw new DomainError('http/sign-in-first', 'sign in, then try again');
    return row;
  }
}
