import { Injectable } from '@nestjs/common';
import type { Import, ImportPlan, SheetGuess } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';

export interface ImportRow extends Record<string, unknown> {
  id: string;
  file_name: string;
  bytes: number;
  uploaded_at: Date;
  uploaded_by: string;
  state: 'read' | 'written' | 'failed';
  guess: SheetGuess;
  plan: ImportPlan | null;
  result: Import['result'];
  failure: string | null;
}

const COLUMNS = `i.id, i.file_name, length(i.content) AS bytes, i.uploaded_at, p.name AS uploaded_by, i.state, i.guess, i.plan, i.result, i.failure`;
const FROM = 'FROM import_sheet i JOIN person p ON p.programme_id = i.programme_id AND p.id = i.uploaded_by';

@Injectable()
export class ImportQueries {
  /** The newest first. A group imports a sheet a season: there are never many. */
  async list(sql: UnitOfWork): Promise<ImportRow[]> {
    return sql.rows<ImportRow>(`SELECT ${COLUMNS} ${FROM} ORDER BY i.uploaded_at DESC LIMIT 200`);
  }

  /** @throws DomainError `import/unknown` */
  async one(sql: UnitOfWork, id: string): Promise<ImportRow> {
    const row = await sql.maybe<ImportRow>(`SELECT ${COLUMNS} ${FROM} WHERE i.id = $1`, [id]);
    if (!row) throw new DomainError('import/unknown', 'there is no import with this id');
    return row;
  }

  async content(sql: UnitOfWork, id: string): Promise<Buffer> {
    const { content } = await sql.one<{ content: Buffer }>('SELECT content FROM import_sheet WHERE id = $1', [id]);
    return content;
  }

  /** Nobody else writes this programme's sheets until the transaction ends: two at once could both find a row new. */
  async lockImports(sql: UnitOfWork, programmeId: string): Promise<boolean> {
    const { locked } = await sql.one<{ locked: boolean }>("SELECT pg_try_advisory_xact_lock(hashtextextended('import ' || $1, 0)) AS locked", [programmeId]);
    return locked;
  }

  async today(sql: UnitOfWork, zone: string): Promise<string> {
    const { today } = await sql.one<{ today: string }>('SELECT present_day($1) AS today', [zone]);
    return today;
  }

  /** How many things at these entries want a second look. */
  async flagsAt(sql: UnitOfWork, entryIds: readonly string[]): Promise<number> {
    const { flags } = await sql.one<{ flags: number }>('SELECT count(*)::int AS flags FROM flag WHERE entry_id = ANY ($1::uuid[])', [entryIds]);
    return flags;
  }

  /** The version of each entry that holds now: the entry itself, or its last correction. */
  async latestVersions(sql: UnitOfWork, entryIds: readonly string[]): Promise<Map<string, string>> {
    const rows = await sql.rows<{ target: string; version: string }>(
      `WITH RECURSIVE chain AS (
         SELECT id AS target, id AS version, 0 AS depth FROM entry WHERE id = ANY ($1::uuid[])
         UNION ALL
         SELECT c.target, next.id, c.depth + 1
         FROM chain c CROSS JOIN LATERAL (
           SELECT e.id FROM entry e WHERE e.corrects_id = c.target AND e.saw_version_id = c.version
           ORDER BY e.observed_on, e.observed_minute NULLS LAST, e.id LIMIT 1) next)
       SELECT DISTINCT ON (target) target, version FROM chain ORDER BY target, depth DESC`,
      [entryIds],
    );
    return new Map(rows.map(({ target, version }) => [target, version]));
  }
}

export const told = (row: ImportRow, progress: { done: number; total: number } | undefined): Import => ({
  id: row.id,
  fileName: row.file_name,
  bytes: row.bytes,
  uploadedAt: row.uploaded_at.toISOString(),
  uploadedBy: row.uploaded_by,
  state: progress ? 'writing' : row.state,
  guess: row.guess,
  plan: row.plan,
  progress: progress ? { done: progress.done, total: progress.total } : null,
  result: row.result,
  failure: row.failure,
});
