import { Injectable } from '@nestjs/common';
import type { Me } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import type { SignedIn } from '../http/caller.ts';
import { AccountQueries } from './account.queries.ts';

@Injectable()
export class MeService {
  constructor(
    private readonly database: Database,
    private readonly accounts: AccountQueries,
  ) {}

  me({ sessionId }: SignedIn): Promise<Me> {
    return this.database.outsideProgrammes((sql) => this.accounts.me(sql, sessionId));
  }
}
