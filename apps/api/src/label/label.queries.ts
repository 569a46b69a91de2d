import { Injectable } from '@nestjs/common';
import type { Label } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';

@Injectable()
export class LabelQueries {
  constructor(private readonly database: Database) {}

  /** As it is written, or, since thumbs are big, in other letters of the same. */
  byCode(caller: Caller, code: string): Promise<Label | undefined> {
    return this.database.inTransaction(caller, (sql) =>
      sql.maybe<Label & Record<string, unknown>>(
        `SELECT code, batch_id AS "batchId", to_char(given_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') AS "givenAt"
         FROM label WHERE programme_id = $1 AND lower(code) = lower($2) ORDER BY code <> $2 LIMIT 1`,
        [caller.programmeId, code],
      ),
    );
  }
}
