import { Injectable } from '@nestjs/common';
import type { AuditRow } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';

const LIST = `
  SELECT a.id, a.at, p.name AS person, a.delivered_by, a.act, a.subject_kind, a.subject_id
  FROM audit a LEFT JOIN person p ON p.programme_id = a.programme_id AND p.id = a.person_id
  WHERE a.programme_id = $1 AND ($2::timestamptz IS NULL OR (a.at, a.id) < ($2, $3::uuid))
  ORDER BY a.at DESC, a.id DESC LIMIT $4`;

interface Row extends Record<string, unknown> {
  id: string;
  at: Date;
  person: string | null;
  delivered_by: string;
  act: string;
  subject_kind: string;
  subject_id: string | null;
}

@Injectable()
export class AuditQueries {
  /** Newest first. */
  async list(sql: UnitOfWork, programmeId: string, after: readonly string[] | undefined, limit: number): Promise<AuditRow[]> {
    const rows = await sql.rows<Row>(LIST, [programmeId, after?.[0] ?? null, after?.[1] ?? null, limit]);
    return rows.map((row) => ({
      id: row.id,
      at: row.at.toISOString(),
      person: row.person,
      deliveredBy: row.delivered_by,
      act: row.act,
      subjectKind: row.subject_kind,
      subjectId: row.subject_id,
    }));
  }
}
