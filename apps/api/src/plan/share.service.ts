import { Inject, Injectable } from '@nestjs/common';
import type { MadeLink, MakePlanShare, PlanShare, SharedPlan } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { TrailQueries } from '../audit/trail.queries.ts';
import { SETTINGS } from '../config/settings.token.ts';
import type { Settings } from '../config/settings.ts';
import { Database } from '../database/database.ts';
import { known } from '../database/known.ts';
import type { Caller } from '../http/caller.ts';
import { linkHash, linkTo, linkToken } from '../http/link.ts';
import { PlanQueries } from './plan.queries.ts';
import { sharedOfPlan } from './shared-of-plan.ts';
import { ShareQueries } from './share.queries.ts';

/** Links by which people outside look at a plan, for their comments. */
@Injectable()
export class ShareService {
  constructor(
    private readonly database: Database,
    private readonly trail: TrailQueries,
    private readonly plans: PlanQueries,
    private readonly shares: ShareQueries,
    @Inject(SETTINGS) private readonly settings: Settings,
  ) {}

  /** @throws DomainError `record/unknown` */
  list(caller: Caller, planId: string): Promise<PlanShare[]> {
    return this.database.inTransaction(caller, async (sql) => {
      known(await this.plans.one(sql, caller.programmeId, planId));
      return this.shares.list(sql, caller.programmeId, planId);
    });
  }

  /** @throws DomainError `record/unknown`, `link/id-reused` */
  make(caller: Caller, planId: string, share: MakePlanShare): Promise<MadeLink> {
    const { programmeId, personId } = caller;
    const token = linkToken(this.settings.secret, 'shared-plan', programmeId, share.id);
    return this.database.inTransaction(caller, async (sql) => {
      known(await this.plans.one(sql, programmeId, planId));
      if (await this.trail.isNew(sql, caller, 'plan-share', { ...share, planId }, 'link/id-reused')) {
        await this.shares.make(sql, programmeId, planId, personId, linkHash(token), share);
      }
      const expires = await this.shares.expiryOf(sql, programmeId, share.id);
      return { id: share.id, link: linkTo(this.settings.baseUrl, 'shared-plan', token), expiresAt: expires.toISOString() };
    });
  }

  /** Closes a link at once. Closing it twice is no mistake. @throws DomainError `record/unknown` */
  revoke(caller: Caller, planId: string, id: string): Promise<void> {
    return this.database.inTransaction(caller, async (sql) => {
      known((await this.shares.revoke(sql, caller.programmeId, planId, id)) || undefined);
      await this.trail.note(sql, caller, { act: 'revoked', kind: 'plan-share', id }, { planId });
    });
  }

  /** @throws DomainError `link/closed` */
  async seen(token: string): Promise<SharedPlan> {
    const found = await this.database.outsideProgrammes((sql) => this.shares.living(sql, linkHash(token)));
    if (!found) throw new DomainError('link/closed', 'ask whoever sent it for a new one: this link was closed, or its days are over');
    return this.database.inTransaction({ programmeId: found.programme_id, seesExact: false }, async (sql) => {
      const head = await this.shares.head(sql, found.programme_id, found.id);
      return sharedOfPlan(known(await this.plans.one(sql, found.programme_id, head.planId)), head);
    });
  }
}
