import { Injectable } from '@nestjs/common';
import type { ReadingFilter } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { chosenStickings } from '../reading/chosen-stickings.queries.ts';

export interface TrayRow extends Record<string, unknown> {
  readonly batchId: string;
  readonly label: string | null;
  readonly place: { readonly id: string; readonly name: string };
  readonly donorTree: string | null;
  readonly taxonId: string;
  readonly taxon: string;
  readonly commonName: string | null;
  readonly stuckOn: string;
  readonly days: number;
  readonly green: number;
}

/** Trays with green cuttings that are not known to have roots and wait for a verdict. A sticking without a day is asked about nowhere. */
const WAITING = (day: string, batch: string): string => `
  SELECT b.id AS "batchId", (SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.batch_id = b.id ORDER BY l.given_at DESC, l.code LIMIT 1) AS label,
    json_build_object('id', p.id, 'name', p.name) AS place, d.label AS "donorTree", k.taxon_id AS "taxonId", t.scientific_name AS taxon, t.common_name AS "commonName",
    k.stuck_on AS "stuckOn", greatest(0, ${day}::date - k.stuck_on) AS days, x.balance - coalesce(x.rooted_now, 0) AS green
  FROM chosen k
  JOIN batch b ON b.programme_id = $1 AND b.sticking_id = k.sticking_id AND b.stage = 'cutting' AND (${batch}::uuid IS NULL OR b.id = ${batch})
  JOIN batch_state x ON x.programme_id = $1 AND x.batch_id = b.id AND x.balance > coalesce(x.rooted_now, 0) AND x.called_on IS NULL
  JOIN place p ON p.programme_id = $1 AND p.id = x.place_id
  JOIN sticking s ON s.programme_id = $1 AND s.id = k.sticking_id
  JOIN taxon t ON t.programme_id = $1 AND t.id = k.taxon_id
  LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = s.donor_tree_id
  WHERE k.stuck_on IS NOT NULL
  ORDER BY k.stuck_on, b.id`;

@Injectable()
export class WaitingTrayQueries {
  async of(sql: UnitOfWork, programmeId: string, filter: ReadingFilter, asOf: string, batchId?: string): Promise<TrayRow[]> {
    const { text, values } = chosenStickings(programmeId, { ...filter, by: 'all' });
    const [day, batch] = [`$${values.length + 1}`, `$${values.length + 2}`];
    return sql.rows<TrayRow>(`WITH chosen AS MATERIALIZED (${text}) ${WAITING(day, batch)}`, [...values, asOf, batchId ?? null]);
  }
}
