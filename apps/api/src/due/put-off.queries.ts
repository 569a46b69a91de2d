import { Injectable } from '@nestjs/common';
import type { NewPutOff } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';

@Injectable()
export class PutOffQueries {
  /** @throws DomainError `due/id-reused` when the id stands for another put-off */
  async isThere(sql: UnitOfWork, { programmeId, personId }: Caller, { id, kind, batchId, placeId, seasonYear, dueOn, until, reason }: NewPutOff): Promise<boolean> {
    const there = await sql.maybe<{ same: boolean }>(
      `SELECT kind = $3 AND batch_id IS NOT DISTINCT FROM $4::uuid AND ($5::uuid IS NULL OR place_id = $5) AND season_year IS NOT DISTINCT FROM $6::int
         AND due_on = $7 AND until = $8 AND reason = $9 AND by_person_id = $10 AS same FROM put_off WHERE programme_id = $1 AND id = $2`,
      [programmeId, id, kind, batchId ?? null, placeId ?? null, seasonYear ?? null, dueOn, until, reason, personId],
    );
    if (there && !there.same) throw new DomainError('due/id-reused', 'that id was used for another put-off: make a new one');
    return there !== undefined;
  }

  async write(sql: UnitOfWork, { programmeId, personId }: Caller, { id, kind, batchId, seasonYear, dueOn, until, reason }: NewPutOff, placeId: string): Promise<void> {
    await sql.rows(
      `INSERT INTO put_off (programme_id, id, kind, place_id, batch_id, season_year, due_on, until, reason, by_person_id)
       VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10) ON CONFLICT (programme_id, id) DO NOTHING`,
      [programmeId, id, kind, placeId, batchId ?? null, seasonYear ?? null, dueOn, until, reason, personId],
    );
  }
}
