import { Injectable } from '@nestjs/common';
import type { ChangeProgramme, OpenProgramme, Programme } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';

const COLUMNS = `id, handle, name, zone, season_starts_in AS "seasonStartsIn", rooted_means AS "rootedMeans", ready_means AS "readyMeans",
  grade_check_every_days AS "gradeCheckEveryDays", is_demo AS "isDemo"`;

type Row = Programme & Record<string, unknown>;

/** Who owns a programme from its first moment. */
export interface FirstOwner {
  readonly personId: string;
  readonly userId: string;
  readonly name: string;
}

@Injectable()
export class ProgrammeQueries {
  /** @param hold keeps it from being changed by others until the transaction ends */
  async one(sql: UnitOfWork, programmeId: string, hold = false): Promise<Programme> {
    return sql.one<Row>(`SELECT ${COLUMNS} FROM programme WHERE id = $1 ${hold ? 'FOR UPDATE' : ''}`, [programmeId]);
  }

  async make(sql: UnitOfWork, { id, handle, name, zone, seasonStartsIn, rootedMeans, readyMeans }: OpenProgramme): Promise<void> {
    await sql.rows(
      'INSERT INTO programme (id, handle, name, zone, season_starts_in, rooted_means, ready_means) VALUES ($1, $2, $3, $4, $5, $6, $7)',
      [id, handle, name, zone, seasonStartsIn, rootedMeans, readyMeans],
    );
  }

  async makeOwner(sql: UnitOfWork, programmeId: string, { personId, userId, name }: FirstOwner): Promise<void> {
    await sql.rows(`INSERT INTO person (programme_id, id, name, user_id, role) VALUES ($1, $2, $3, $4, 'owner')`, [programmeId, personId, name, userId]);
  }

  async change(sql: UnitOfWork, programmeId: string, { name, zone, seasonStartsIn, rootedMeans, readyMeans, gradeCheckEveryDays }: ChangeProgramme): Promise<Programme> {
    return sql.one<Row>(
      `UPDATE programme SET name = coalesce($2, name), zone = coalesce($3, zone), season_starts_in = coalesce($4, season_starts_in),
         rooted_means = coalesce($5, rooted_means), ready_means = coalesce($6, ready_means),
         grade_check_every_days = coalesce($7, grade_check_every_days)
       WHERE id = $1 RETURNING ${COLUMNS}`,
      [programmeId, name, zone, seasonStartsIn, rootedMeans, readyMeans, gradeCheckEveryDays],
    );
  }
}
