import { Injectable } from '@nestjs/common';
import type { NewReview, ReviewItem, ReviewQuery } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import type { Part } from '../http/part-of-list.ts';
import { ReviewQueries } from './review.queries.ts';

@Injectable()
export class ReviewService {
  constructor(
    private readonly database: Database,
    private readonly queries: ReviewQueries,
  ) {}

  open(caller: Caller, query: ReviewQuery): Promise<Part<ReviewItem>> {
    return this.database.inTransaction(caller, (sql) => this.queries.open(sql, caller.programmeId, query));
  }

  /**
   * Writes a decision. The flag may be rebuilt; the decision stays.
   *
   * @throws DomainError `review/id-reused` when the id stands for another decision
   * @throws DomainError `entry/unknown`, `record/unknown`
   */
  async decide(caller: Caller, review: NewReview): Promise<void> {
    const { id, entryId, batchId = null, code, decision, assignedTo = null, note = null } = review;
    const values = [caller.programmeId, id, entryId, batchId, code, decision, assignedTo, note, caller.personId];
    await this.database.inTransaction(caller, async (sql) => {
      await sql.rows(
        `INSERT INTO review (programme_id, id, entry_id, batch_id, code, decision, assigned_to, note, by_person_id)
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9) ON CONFLICT (programme_id, id) DO NOTHING`,
        values,
      );
      const same = await sql.maybe(
        `SELECT FROM review WHERE programme_id = $1 AND id = $2 AND entry_id = $3 AND batch_id IS NOT DISTINCT FROM $4::uuid AND code = $5
           AND decision = $6 AND assigned_to IS NOT DISTINCT FROM $7::uuid AND note IS NOT DISTINCT FROM $8::text AND by_person_id = $9`,
        values,
      );
      if (!same) throw new DomainError('review/id-reused', 'that id was used for another decision: make a new one');
    });
  }
}
