import { Injectable } from '@nestjs/common';
import type { Joined, SetUp } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { v7 as newId } from 'uuid';
import { TrailQueries } from '../audit/trail.queries.ts';
import { Database } from '../database/database.ts';
import { linkHash } from '../http/link.ts';
import { AccountQueries } from '../sign-in/account.queries.ts';
import { ProgrammeQueries } from './programme.queries.ts';

@Injectable()
export class SetupService {
  constructor(
    private readonly database: Database,
    private readonly queries: ProgrammeQueries,
    private readonly accounts: AccountQueries,
    private readonly trail: TrailQueries,
  ) {}

  /** @throws DomainError `link/closed`, as `setUp` */
  seen(token: string): Promise<void> {
    return this.#refuseUnlessOpen(linkHash(token));
  }

  /**
   * The first account, the first programme and its owner, all or nothing. Of two at once one succeeds.
   *
   * @throws DomainError `link/closed` when the link was used, is older than three days, or a programme is there
   */
  async setUp({ token, account, programme }: SetUp): Promise<Joined> {
    const hash = linkHash(token);
    await this.#refuseUnlessOpen(hash);
    const owner = await this.accounts.hashed(account);
    const [programmeId, personId] = [newId(), newId()];

    await this.database.inTransaction({ programmeId, seesExact: false }, async (sql) => {
      await this.accounts.open(sql, hash, owner);
      const { used } = await sql.one<{ used: boolean }>('SELECT use_setup_link($1) AS used', [hash]);
      if (!used) throw closed();
      await this.queries.make(sql, { id: programmeId, ...programme });
      await this.queries.makeOwner(sql, programmeId, { personId, userId: owner.userId, name: owner.name });
      await this.trail.note(sql, { programmeId, personId }, { act: 'made', kind: 'programme', id: programmeId });
    });
    return { programme: programme.handle };
  }

  /** Before any password is hashed: strangers must not make the server work. */
  async #refuseUnlessOpen(hash: Buffer): Promise<void> {
    const { open } = await this.database.outsideProgrammes((sql) => sql.one<{ open: boolean }>('SELECT living_setup_link($1) AS open', [hash]));
    if (!open) throw closed();
  }
}

const closed = () => new DomainError('link/closed', 'start Sprigline again for a new link, or sign in if it is set up already');
