import { Injectable } from '@nestjs/common';
import type { Despatch, DespatchNote } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { WENT } from './claims.queries.ts';

const LABEL_OF = (batch: string): string =>
  `(SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.batch_id = ${batch} ORDER BY l.given_at DESC, l.code LIMIT 1)`;

const NOTE = `
SELECT q.id, q.gone_on AS "goneOn", coalesce(pa.name::text, q.outside) AS "to", t.scientific_name AS taxon, t.common_name AS "commonName", q.stage, q.plants AS asked,
  (SELECT string_agg(DISTINCT coalesce(up.name || ' › ', '') || p.name, ', ') FROM despatch x JOIN entry e ON e.programme_id = $1 AND e.id = x.entry_id
    JOIN place p ON p.programme_id = $1 AND p.id = (e.body ->> 'placeId')::uuid LEFT JOIN place up ON up.programme_id = $1 AND up.id = p.parent_id
    WHERE x.programme_id = $1 AND x.request_id = q.id) AS place,
  (SELECT coalesce(json_agg(json_build_object(
      'entryId', x.entry_id, 'batchId', x.batch_id, 'label', ${LABEL_OF('x.batch_id')}, 'container', b.container, 'stuckOn', k.stuck_on, 'n', ${WENT},
      'donorTree', CASE WHEN d.id IS NOT NULL THEN json_build_object('id', d.id, 'label', d.label) END,
      'stand', CASE WHEN st.id IS NOT NULL THEN json_build_object('id', st.id, 'name', st.name) END,
      'toBatch', CASE WHEN there.id IS NOT NULL THEN json_build_object('id', there.id, 'label', ${LABEL_OF('there.id')}) END)
      ORDER BY st.name, d.label, ${LABEL_OF('x.batch_id')}, x.entry_id), '[]')
    FROM despatch x JOIN entry e ON e.programme_id = $1 AND e.id = x.entry_id JOIN batch b ON b.programme_id = $1 AND b.id = x.batch_id
    LEFT JOIN sticking k ON k.programme_id = $1 AND k.id = b.sticking_id
    LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = k.donor_tree_id
    LEFT JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id
    LEFT JOIN batch there ON there.programme_id = $1 AND there.id = (e.body ->> 'toBatchId')::uuid
    WHERE x.programme_id = $1 AND x.request_id = q.id) AS lines
FROM request q JOIN taxon t ON t.programme_id = $1 AND t.id = q.taxon_id LEFT JOIN partner pa ON pa.programme_id = $1 AND pa.id = q.partner_id
WHERE q.programme_id = $1 AND q.id = $2 AND q.state = 'gone'`;

type NoteRow = Omit<DespatchNote, 'plants' | 'donorTrees'> & Record<string, unknown>;

@Injectable()
export class DespatchQueries {
  /** @throws DomainError `record/unknown` while nothing has gone */
  async note(sql: UnitOfWork, programmeId: string, id: string): Promise<DespatchNote> {
    const note = await sql.maybe<NoteRow>(NOTE, [programmeId, id]);
    if (!note) throw new DomainError('record/unknown', 'nothing has gone for that request yet', { id });
    const went = note.lines.filter(({ n }) => n > 0);
    return {
      ...note,
      plants: went.reduce((sum, { n }) => sum + n, 0),
      donorTrees: new Set(went.flatMap(({ donorTree }) => donorTree?.id ?? [])).size,
    };
  }

  /** The request has gone by these entries, and nothing is set aside for it any more. */
  async finish(sql: UnitOfWork, programmeId: string, id: string, { observedOn, lines }: Despatch): Promise<void> {
    await sql.rows(
      `WITH gone AS (UPDATE request SET state = 'gone', gone_on = $4 WHERE programme_id = $1 AND id = $2),
         freed AS (DELETE FROM reservation WHERE programme_id = $1 AND request_id = $2)
       INSERT INTO despatch (programme_id, request_id, entry_id, batch_id)
       SELECT $1, $2, "entryId", "batchId" FROM jsonb_to_recordset($3::jsonb) AS l ("entryId" uuid, "batchId" uuid)`,
      [programmeId, id, JSON.stringify(lines), observedOn],
    );
  }

  /** Ids of the entries that despatched it. */
  async entriesOf(sql: UnitOfWork, programmeId: string, id: string): Promise<string[]> {
    const rows = await sql.rows<{ id: string }>('SELECT entry_id AS id FROM despatch WHERE programme_id = $1 AND request_id = $2', [programmeId, id]);
    return rows.map((row) => row.id);
  }
}
