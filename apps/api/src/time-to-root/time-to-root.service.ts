import { Injectable } from '@nestjs/common';
import type { CurveQuery, RootingCurves } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import { HeadQueries } from '../reading/head.queries.ts';
import { curvesOf } from './curve-of-group.ts';
import { FollowedQueries } from './followed.queries.ts';

@Injectable()
export class TimeToRootService {
  constructor(
    private readonly database: Database,
    private readonly headQueries: HeadQueries,
    private readonly followedQueries: FollowedQueries,
  ) {}

  /** How long cuttings take to root, a curve a group. */
  async curves(caller: Caller, query: CurveQuery): Promise<RootingCurves> {
    const { head, stickings } = await this.database.inTransaction(caller, async (sql) => ({
      head: await this.headQueries.head(sql, caller.programmeId),
      stickings: await this.followedQueries.of(sql, caller.programmeId, query),
    }));
    return { ...head, ...curvesOf(stickings) };
  }
}
