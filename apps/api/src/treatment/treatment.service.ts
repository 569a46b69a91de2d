import { Injectable } from '@nestjs/common';
import type { TreatmentQuery, Treatments } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import { treatmentsOf } from './treatment.queries.ts';

@Injectable()
export class TreatmentService {
  constructor(private readonly database: Database) {}

  /** What was done in some days, as the books know it today. */
  list(caller: Caller, query: TreatmentQuery): Promise<Treatments> {
    return this.database.inTransaction(caller, async (sql) => {
      const { asOf, from, until } = await sql.one<{ asOf: string; from: string; until: string }>(
        `SELECT present_day($1)::text AS "asOf", coalesce($2::date, coalesce($3::date, present_day($1)) - interval '1 year')::date::text AS "from",
           coalesce($3::date, greatest(present_day($1), $2::date))::text AS until`,
        [caller.zone, query.from ?? null, query.until ?? null],
      );
      return { asOf, from, until, treatments: await treatmentsOf(sql, caller.programmeId, { ...query, from, until }) };
    });
  }
}
