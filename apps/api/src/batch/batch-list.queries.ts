import { Injectable } from '@nestjs/common';
import type { BatchInList, BatchQuery } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';
import { SHOWN, SHOWN_FROM } from './shown.queries.ts';

type Row = BatchInList & Record<string, unknown>;

@Injectable()
export class BatchListQueries {
  /** The newest first; ids tell their age only among themselves, so the day they were opened leads. */
  async list(sql: UnitOfWork, programmeId: string, query: BatchQuery): Promise<Part<BatchInList>> {
    const values: unknown[] = [programmeId];
    const given = (condition: (place: string) => string, value: unknown): string => {
      if (value === undefined) return '';
      values.push(value);
      return ` AND ${condition(`$${values.length}`)}`;
    };
    const [day, id] = keysAfter(query.after, 2) ?? [];
    const where = [
      given((n) => `s.place_id IN (${inside(n)})`, query.placeId),
      given((n) => `d.stand_id = ${n}`, query.standId),
      given((n) => `k.donor_tree_id = ${n}`, query.donorTreeId),
      given((n) => `b.sticking_id = ${n}`, query.stickingId),
      given((n) => `k.taxon_id = ${n}`, query.taxonId),
      given((n) => `EXISTS (SELECT FROM batch_partner r WHERE r.programme_id = $1 AND r.batch_id = b.id AND r.relation = ${n})`, query.relation),
      given((n) => `b.stage = ${n}`, query.stage),
      query.state ? ` AND s.balance ${query.state === 'alive' ? '> 0' : '= 0'}` : '',
      day === undefined ? '' : given((n) => `(b.opened_on, b.id) < (${n}::date, $${values.length + 1}::uuid)`, day),
    ];
    if (id !== undefined) values.push(id);
    values.push(query.limit + 1);
    const rows = await sql.rows<Row>(
      `SELECT ${SHOWN} FROM ${SHOWN_FROM} WHERE b.programme_id = $1${where.join('')}
       ORDER BY b.opened_on DESC, b.id DESC LIMIT $${values.length}`,
      values,
    );
    return partOf<BatchInList>(rows, query.limit, (batch) => [batch.openedOn, batch.id]);
  }
}

/** A place and all that lies in it. */
const inside = (place: string): string => `
  WITH RECURSIVE within AS (
    SELECT ${place}::uuid AS id UNION SELECT p.id FROM within w JOIN place p ON p.programme_id = $1 AND p.parent_id = w.id
  ) SELECT id FROM within`;
