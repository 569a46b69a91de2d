import { Injectable } from '@nestjs/common';
import type { DecideMany, NewAnswer, NewReview, Question, ReviewGroup, ReviewItem, ReviewQuery } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';
import type { Part } from '../http/part-of-list.ts';
import { QuestionQueries } from './question.queries.ts';
import { ReviewQueries } from './review.queries.ts';

@Injectable()
export class ReviewService {
  constructor(
    private readonly database: Database,
    private readonly queries: ReviewQueries,
    private readonly questions: QuestionQueries,
  ) {}

  open(caller: Caller, query: ReviewQuery): Promise<Part<ReviewItem>> {
    return this.database.inTransaction(caller, (sql) => this.queries.open(sql, caller.programmeId, query));
  }

  groups(caller: Caller): Promise<ReviewGroup[]> {
    return this.database.inTransaction(caller, (sql) => this.queries.groups(sql, caller.programmeId, caller.personId));
  }

  /**
   * Writes a decision. The flag may be rebuilt; the decision stays.
   *
   * @throws DomainError `review/id-reused` when the id stands for another decision
   * @throws DomainError `review/nobody-to-ask` for a question whose author has no account
   * @throws DomainError `entry/unknown`, `record/no-such-person`
   */
  decide(caller: Caller, review: NewReview): Promise<void> {
    return this.database.inTransaction(caller, async (sql) => {
      const askedOf = review.decision === 'asked' ? await this.questions.author(sql, caller.programmeId, review.entryId) : null;
      await write(sql, caller, [review], { ...review, askedOf });
    });
  }

  /**
   * Accepts many at once for one reason: all of them, or none.
   *
   * @throws DomainError `review/id-reused`, `entry/unknown`
   */
  decideMany(caller: Caller, { items, ...decision }: DecideMany): Promise<void> {
    return this.database.inTransaction(caller, (sql) => write(sql, caller, items, decision));
  }

  /** What was asked of the caller and waits for an answer. */
  questionsTo(caller: Caller): Promise<Question[]> {
    return this.database.inTransaction(caller, (sql) => this.questions.to(sql, caller));
  }

  /** @throws DomainError `record/unknown`, `review/answered-already` */
  answer(caller: Caller, questionId: string, answer: NewAnswer): Promise<void> {
    return this.database.inTransaction(caller, (sql) => this.questions.answer(sql, caller, questionId, answer));
  }
}

interface Doubt {
  readonly id: string;
  readonly entryId: string;
  readonly batchId?: string | undefined;
  readonly code: string;
}

interface Decided {
  readonly decision: string;
  readonly assignedTo?: string | undefined;
  readonly askedOf?: string | null;
  readonly note?: string | undefined;
}

async function write(sql: UnitOfWork, caller: Caller, doubts: readonly Doubt[], { decision, assignedTo = undefined, askedOf = null, note }: Decided): Promise<void> {
  const values = [
    caller.programmeId, doubts.map(({ id }) => id), doubts.map(({ entryId }) => entryId), doubts.map(({ batchId }) => batchId ?? null),
    doubts.map(({ code }) => code), decision, assignedTo ?? null, note ?? null, caller.personId,
  ];
  await sql.rows(
    `INSERT INTO review (programme_id, id, entry_id, batch_id, code, decision, assigned_to, note, by_person_id, asked_of)
     SELECT $1, d.id, d.entry_id, d.batch_id, d.code, $6, $7, $8, $9, $10 FROM unnest($2::uuid[], $3::uuid[], $4::uuid[], $5::text[]) AS d (id, entry_id, batch_id, code)
     ON CONFLICT (programme_id, id) DO NOTHING`,
    [...values, askedOf],
  );
  const { same } = await sql.one<{ same: number }>(
    `SELECT count(*)::int AS same FROM review r JOIN unnest($2::uuid[], $3::uuid[], $4::uuid[], $5::text[]) AS d (id, entry_id, batch_id, code) ON d.id = r.id
     WHERE r.programme_id = $1 AND r.entry_id = d.entry_id AND r.batch_id IS NOT DISTINCT FROM d.batch_id AND r.code = d.code AND r.decision = $6
       AND r.assigned_to IS NOT DISTINCT FROM $7::uuid AND r.note IS NOT DISTINCT FROM $8::text AND r.by_person_id = $9`,
    values,
  );
  if (same !== doubts.length) throw new DomainError('review/id-reused', 'that id was used for another decision: make a new one');
}
