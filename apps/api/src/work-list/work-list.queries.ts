import { Injectable } from '@nestjs/common';
import type { BatchInList, NewWorkList, WorkList, WorkListInList, WorkListLine, WorkListQuery } from '@sprigline/contract';
import { SHOWN, SHOWN_FROM } from '../batch/shown.queries.ts';
import { known } from '../database/known.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';

type ListRow = Record<string, unknown> & Omit<WorkListInList, 'lines' | 'typed'>;
type LineRow = Record<string, unknown> & BatchInList & Pick<WorkListLine['batch'], 'container' | 'rootedOn'> & Pick<WorkListLine, 'number' | 'path' | 'typed'>;

const HEAD = `w.id, w.kind, w.asked, w.made_by AS "madeBy", to_json(w.made_at) #>> '{}' AS "madeAt"`;

const LINES = `
WITH RECURSIVE walk AS (
  SELECT id, ARRAY[name::text] AS path FROM place WHERE programme_id = $1 AND parent_id IS NULL
  UNION ALL SELECT p.id, walk.path || p.name::text FROM walk JOIN place p ON p.programme_id = $1 AND p.parent_id = walk.id
)
SELECT n.number, walk.path, ${SHOWN}, b.container, s.rooted_on AS "rootedOn", (
  SELECT json_build_object('at', min(y.typed_at), 'by', (array_agg(y.typed_by ORDER BY y.typed_at))[1], 'entryIds', json_agg(y.entry_id ORDER BY y.entry_id))
  FROM work_list_typed y WHERE y.programme_id = $1 AND y.work_list_id = $2 AND y.number = n.number HAVING count(*) > 0) AS typed
FROM work_list_line n JOIN (${SHOWN_FROM}) ON n.programme_id = b.programme_id AND n.batch_id = b.id
JOIN walk ON walk.id = s.place_id
WHERE n.programme_id = $1 AND n.work_list_id = $2 ORDER BY n.number`;

@Injectable()
export class WorkListQueries {
  async list(sql: UnitOfWork, programmeId: string, { kind, after, limit }: WorkListQuery): Promise<Part<WorkListInList>> {
    const [madeAt = null, id = null] = keysAfter(after, 2) ?? [];
    const rows = await sql.rows<WorkListInList & Record<string, unknown>>(
      `SELECT ${HEAD}, (SELECT count(*)::int FROM work_list_line n WHERE n.programme_id = $1 AND n.work_list_id = w.id) AS lines,
         (SELECT count(DISTINCT y.number)::int FROM work_list_typed y WHERE y.programme_id = $1 AND y.work_list_id = w.id) AS typed
       FROM work_list w WHERE w.programme_id = $1 AND ($2::text IS NULL OR w.kind = $2) AND ($3::timestamptz IS NULL OR (w.made_at, w.id) < ($3, $4::uuid))
       ORDER BY w.made_at DESC, w.id DESC LIMIT $5`,
      [programmeId, kind ?? null, madeAt, id, limit + 1],
    );
    return partOf<WorkListInList>(rows, limit, (list) => [list.madeAt, list.id]);
  }

  head(sql: UnitOfWork, programmeId: string, id: string): Promise<ListRow | undefined> {
    return sql.maybe<ListRow>(`SELECT ${HEAD} FROM work_list w WHERE w.programme_id = $1 AND w.id = $2`, [programmeId, id]);
  }

  /** @throws DomainError `record/unknown` */
  async one(sql: UnitOfWork, programmeId: string, id: string): Promise<WorkList> {
    const head = known(await this.head(sql, programmeId, id));
    const rows = await sql.rows<LineRow>(LINES, [programmeId, id]);
    return { ...head, lines: rows.map(({ number, path, typed, ...batch }) => ({ number, path, typed, batch })) };
  }

  /** Keeps the sheet. Two requests at once with one id make one. */
  async keep(sql: UnitOfWork, { programmeId, personId }: Caller, { id, kind, asked }: NewWorkList, batchIds: readonly string[]): Promise<void> {
    await sql.rows(
      `WITH made AS (
         INSERT INTO work_list (programme_id, id, kind, asked, made_by) VALUES ($1, $2, $3, $4, $5) ON CONFLICT (programme_id, id) DO NOTHING RETURNING id
       ) INSERT INTO work_list_line (programme_id, work_list_id, number, batch_id)
       SELECT $1, made.id, chosen.number, chosen.batch_id FROM made, unnest($6::uuid[]) WITH ORDINALITY AS chosen (batch_id, number)`,
      [programmeId, id, kind, JSON.stringify(asked), personId, batchIds],
    );
  }
}
