import { Injectable } from '@nestjs/common';
import type { ReadingFilter } from '@sprigline/contract';
import type { Stage, StageBatch } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { chosenStickings } from '../reading/chosen-stickings.queries.ts';
import { LAST_STICKINGS } from '../time-to-root/followed.queries.ts';

type Moved = readonly [entryId: string, day: number, effect: StageBatch['movements'][number]['effect'], n: number, toStage: Stage | null, undoes: string | null];

/** The books of one sticking at all its stages, in days since sticking. */
export interface StageBooks {
  readonly stickingId: string;
  readonly unit: string;
  readonly taxonId: string;
  readonly taxon: string;
  readonly commonName: string | null;
  readonly stuckOn: string;
  /** Days since sticking, today. */
  readonly days: number;
  /** Whether the reading is of it; the others are history alone. */
  readonly isAsked: boolean;
  readonly batches: readonly StageBatch[];
}

interface Row extends Record<string, unknown>, Omit<StageBooks, 'batches'> {
  readonly batches: readonly { readonly stage: Stage; readonly movements: readonly Moved[] }[];
}

/** Of the species asked about, what is asked and besides it the last stickings of the whole programme. */
const BOOKS = (day: string): string => `
  , species AS (SELECT DISTINCT taxon_id FROM asked),
  latest AS (
    SELECT l.* FROM species x CROSS JOIN LATERAL (
      SELECT s.id FROM sticking s WHERE s.programme_id = $1 AND s.taxon_id = x.taxon_id AND s.stuck_on IS NOT NULL ORDER BY s.stuck_on DESC, s.id LIMIT ${LAST_STICKINGS}) l
    UNION SELECT sticking_id FROM asked WHERE stuck_on IS NOT NULL)
  SELECT s.id AS "stickingId", coalesce(d.clone_group_id, d.id, s.id) AS unit, s.taxon_id AS "taxonId", t.scientific_name AS taxon, t.common_name AS "commonName", s.stuck_on AS "stuckOn",
    greatest(0, ${day}::date - s.stuck_on) AS days, a.sticking_id IS NOT NULL AS "isAsked", json_agg(json_build_object('stage', b.stage, 'movements', moved.rows)) AS batches
  FROM latest l
  JOIN sticking s ON s.programme_id = $1 AND s.id = l.id
  JOIN taxon t ON t.programme_id = $1 AND t.id = s.taxon_id
  LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = s.donor_tree_id
  LEFT JOIN asked a ON a.sticking_id = s.id
  JOIN batch b ON b.programme_id = $1 AND b.sticking_id = s.id
  CROSS JOIN LATERAL (
    SELECT json_agg(json_build_array(m.entry_id, m.day - s.stuck_on, m.effect, m.n, m.to_stage, m.undoes_id) ORDER BY m.seq) AS rows
    FROM movement m WHERE m.programme_id = $1 AND m.batch_id = b.id) moved
  WHERE moved.rows IS NOT NULL
  GROUP BY s.id, d.clone_group_id, d.id, s.taxon_id, t.scientific_name, t.common_name, s.stuck_on, a.sticking_id`;

@Injectable()
export class StageBooksQueries {
  async of(sql: UnitOfWork, programmeId: string, filter: ReadingFilter, asOf: string): Promise<StageBooks[]> {
    const { text, values } = chosenStickings(programmeId, { ...filter, by: 'all' });
    const rows = await sql.rows<Row>(`WITH asked AS MATERIALIZED (${text}) ${BOOKS(`$${values.length + 1}`)}`, [...values, asOf]);
    return rows.map(({ batches, ...sticking }) => ({ ...sticking, batches: batches.map(({ stage, movements }) => ({ stage, movements: movements.map(movementOf) })) }));
  }
}

const movementOf = ([entryId, day, effect, n, toStage, undoes]: Moved): StageBatch['movements'][number] => ({ entryId, day, effect, n, toStage: toStage ?? undefined, undoes: undoes ?? undefined });
