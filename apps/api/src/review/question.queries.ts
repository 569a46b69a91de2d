import { Injectable } from '@nestjs/common';
import type { NewAnswer, Question } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';

/** Open until it is answered, or somebody has decided without. */
const MINE = `
SELECT q.id, q.entry_id AS "entryId", q.code, q.note AS question, by.name AS by, to_char(q.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') AS at,
  e.kind, e.body AS said, e.observed_on AS day, e.note, f.n,
  CASE WHEN b.id IS NOT NULL THEN json_build_object('id', b.id, 'placeName', p.name,
    'label', (SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.batch_id = b.id ORDER BY l.given_at DESC, l.code LIMIT 1)) END AS batch
FROM review q JOIN person by ON by.programme_id = $1 AND by.id = q.by_person_id JOIN entry e ON e.programme_id = $1 AND e.id = q.entry_id
LEFT JOIN flag f ON f.programme_id = $1 AND f.entry_id = q.entry_id AND f.batch_id = q.batch_id AND f.code = q.code
LEFT JOIN batch b ON b.programme_id = $1 AND b.id = q.batch_id LEFT JOIN batch_state s ON s.programme_id = $1 AND s.batch_id = b.id
LEFT JOIN place p ON p.programme_id = $1 AND p.id = s.place_id
WHERE q.programme_id = $1 AND q.asked_of = $2 AND NOT EXISTS (SELECT FROM review a WHERE a.programme_id = $1 AND a.answers_id = q.id)
  AND NOT EXISTS (SELECT FROM review r WHERE r.programme_id = $1 AND r.entry_id = q.entry_id AND r.code = q.code AND r.batch_id IS NOT DISTINCT FROM q.batch_id
    AND r.decision IN ('accepted', 'mended'))
ORDER BY q.at, q.id LIMIT 100`;

/** Questions about doubtful entries, put to whoever wrote them. */
@Injectable()
export class QuestionQueries {
  to(sql: UnitOfWork, { programmeId, personId }: Caller): Promise<Question[]> {
    return sql.rows<Question & Record<string, unknown>>(MINE, [programmeId, personId]);
  }

  /**
   * Whom a question about an entry goes to: whoever wrote it.
   *
   * @throws DomainError `entry/unknown`
   * @throws DomainError `review/nobody-to-ask` when they have no account here, or have left
   */
  async author(sql: UnitOfWork, programmeId: string, entryId: string): Promise<string> {
    const row = await sql.maybe<{ id: string | null }>(
      `SELECT p.id FROM entry e LEFT JOIN person p ON p.programme_id = $1 AND p.id = e.written_by AND p.user_id IS NOT NULL AND p.left_at IS NULL
       WHERE e.programme_id = $1 AND e.id = $2`,
      [programmeId, entryId],
    );
    if (!row) throw new DomainError('entry/unknown', 'there is no such entry');
    if (row.id === null) throw new DomainError('review/nobody-to-ask', 'whoever wrote it has no account here: ask them yourself, or assign it to somebody');
    return row.id;
  }

  /**
   * Writes an answer beside its question. Sending it twice answers once.
   *
   * @throws DomainError `record/unknown` for a question that was not put to the caller
   * @throws DomainError `review/answered-already`
   */
  async answer(sql: UnitOfWork, { programmeId, personId }: Caller, questionId: string, { id, answer }: NewAnswer): Promise<void> {
    const question = await sql.maybe(`SELECT FROM review WHERE programme_id = $1 AND id = $2 AND asked_of = $3`, [programmeId, questionId, personId]);
    if (!question) throw new DomainError('record/unknown', 'no such question was put to you');
    await sql.rows(
      `INSERT INTO review (programme_id, id, entry_id, batch_id, code, decision, note, by_person_id, answers_id)
       SELECT $1, $3, entry_id, batch_id, code, 'answered', $4, $5, id FROM review WHERE programme_id = $1 AND id = $2
       ON CONFLICT DO NOTHING`,
      [programmeId, questionId, id, answer, personId],
    );
    const same = await sql.maybe(
      `SELECT FROM review WHERE programme_id = $1 AND id = $3 AND answers_id = $2 AND note = $4 AND by_person_id = $5`,
      [programmeId, questionId, id, answer, personId],
    );
    if (!same) throw new DomainError('review/answered-already', 'this question has its answer: tell a coordinator if it was wrong');
  }
}
