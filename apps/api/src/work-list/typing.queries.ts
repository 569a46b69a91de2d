import { Injectable } from '@nestjs/common';
import type { WorkListKind } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';

interface LineRow extends Record<string, unknown> {
  readonly kind: WorkListKind;
  readonly number: number;
  readonly batchId: string;
  /** Entries that it became before. */
  readonly typed: string[];
}

@Injectable()
export class TypingQueries {
  /** Whoever types the same sheet at the same time waits for the other. */
  async lock(sql: UnitOfWork, listId: string): Promise<void> {
    await sql.rows('SELECT pg_advisory_xact_lock(hashtextextended($1, 0))', [`work list ${listId}`]);
  }

  /** Those of the lines that there are. None of any number: no such sheet, or none of its lines. */
  lines(sql: UnitOfWork, programmeId: string, listId: string, numbers: readonly number[]): Promise<LineRow[]> {
    return sql.rows<LineRow>(
      `SELECT w.kind, n.number, n.batch_id AS "batchId",
         ARRAY(SELECT y.entry_id FROM work_list_typed y WHERE y.programme_id = $1 AND y.work_list_id = $2 AND y.number = n.number) AS typed
       FROM work_list w JOIN work_list_line n ON n.programme_id = $1 AND n.work_list_id = w.id
       WHERE w.programme_id = $1 AND w.id = $2 AND n.number = ANY ($3::int[])`,
      [programmeId, listId, numbers],
    );
  }

  /** Notes which entries came from which line. */
  async mark(sql: UnitOfWork, { programmeId, personId }: Caller, listId: string, typed: readonly { readonly number: number; readonly entryId: string }[]): Promise<void> {
    if (typed.length === 0) return;
    await sql.rows(
      `INSERT INTO work_list_typed (programme_id, work_list_id, number, entry_id, typed_by)
       SELECT $1, $2, line.number, line.entry_id, $3 FROM unnest($4::int[], $5::uuid[]) AS line (number, entry_id)`,
      [programmeId, listId, personId, typed.map(({ number }) => number), typed.map(({ entryId }) => entryId)],
    );
  }
}
