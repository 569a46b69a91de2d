import { Injectable } from '@nestjs/common';
import type { HandoverReport } from '@sprigline/contract';
import { dayAfter } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import { DueFoundQueries } from '../due/due-found.queries.ts';
import type { Caller } from '../http/caller.ts';
import { HandoverQueries } from './handover.queries.ts';
import { ReportHeadQueries, told } from './report-head.queries.ts';

/** Time to find one's feet: what falls due until then is handed over with the rest. */
const AHEAD_DAYS = 28;

/** As many places as are walked in four weeks; the rest is counted. */
const PLACES = 200;

@Injectable()
export class HandoverService {
  constructor(
    private readonly database: Database,
    private readonly heads: ReportHeadQueries,
    private readonly handovers: HandoverQueries,
    private readonly found: DueFoundQueries,
  ) {}

  /** What a new coordinator has to know today. */
  handover(caller: Caller): Promise<HandoverReport> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.heads.head(sql, caller.programmeId, undefined);
      const { permissions, ...rows } = await this.handovers.rows(sql, caller.programmeId, head.today);
      const due = await this.found.byPlace(sql, caller.programmeId, { until: dayAfter(head.today, AHEAD_DAYS), limit: PLACES });
      return { ...told(head), ...rows, due, permissions: caller.seesExact ? permissions : null };
    });
  }
}
