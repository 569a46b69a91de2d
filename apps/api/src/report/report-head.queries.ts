import { Injectable } from '@nestjs/common';
import { DomainError } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';

export interface ReportHead extends Record<string, unknown> {
  readonly asOf: string;
  readonly today: string;
  readonly programme: string;
  readonly rootedMeans: string;
  /** Month in which a season begins, January is 1. */
  readonly seasonStartsIn: number;
}

@Injectable()
export class ReportHeadQueries {
  /** @throws DomainError `report/day-in-future` */
  async head(sql: UnitOfWork, programmeId: string, asOf: string | undefined): Promise<ReportHead> {
    const head = await sql.one<ReportHead>(
      `SELECT coalesce($2::date, present_day(zone)) AS "asOf", present_day(zone) AS today, name AS programme, rooted_means AS "rootedMeans", season_starts_in AS "seasonStartsIn"
       FROM programme WHERE id = $1`,
      [programmeId, asOf ?? null],
    );
    if (head.asOf > head.today) throw new DomainError('report/day-in-future', 'books are known up to today: choose today or an earlier day', { asOf: head.asOf, today: head.today });
    return head;
  }
}

/** What of the head a report tells. */
export const told = ({ asOf, today, programme, rootedMeans }: ReportHead) => ({ asOf, today, programme, rootedMeans });
