import { Controller, Get, SerializeOptions } from '@nestjs/common';
import { Me } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import { type SignedIn, TheAccount } from '../http/caller.ts';
import { SignedInOnly } from '../http/rule.ts';
import { AccountQueries } from './account.queries.ts';

@Controller('me')
export class MeController {
  constructor(
    private readonly database: Database,
    private readonly accounts: AccountQueries,
  ) {}

  /** Who is signed in, and where they work. */
  @Get()
  @SignedInOnly()
  @SerializeOptions({ schema: Me })
  me(@TheAccount() { sessionId }: SignedIn): Promise<Me> {
    return this.database.outsideProgrammes((sql) => this.accounts.me(sql, sessionId));
  }
}
