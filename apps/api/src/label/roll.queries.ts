import { Injectable } from '@nestjs/common';
import type { LabelRoll, LabelRollInList, LabelRollQuery, NewLabelRoll } from '@sprigline/contract';
import { known } from '../database/known.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';
import { GIVEN_AT, LABELLED, LABELLED_ID } from './label.queries.ts';

const HEAD = `r.id, r.name, r.made_by AS "madeBy", to_json(r.made_at) #>> '{}' AS "madeAt"`;
/** Drawn codes are kept as they are printed, so the label of one is written the same. */
const CODES_OF = 'roll_code c LEFT JOIN label l ON l.programme_id = c.programme_id AND l.code = c.code';

const LIST = `
  SELECT ${HEAD}, n.codes, n.unclaimed FROM label_roll r
  CROSS JOIN LATERAL (
    SELECT count(*)::int AS codes, (count(*) FILTER (WHERE l.code IS NULL))::int AS unclaimed
    FROM ${CODES_OF} WHERE c.programme_id = $1 AND c.label_roll_id = r.id) n
  WHERE r.programme_id = $1 AND ($2::timestamptz IS NULL OR (r.made_at, r.id) < ($2, $3::uuid))
  ORDER BY r.made_at DESC, r.id DESC LIMIT $4`;

const ONE = `
  SELECT ${HEAD}, (count(*) FILTER (WHERE l.code IS NULL))::int AS unclaimed, json_agg(json_build_object(
    'number', c.number, 'code', c.code,
    'on', CASE WHEN l.code IS NOT NULL THEN json_build_object('is', ${LABELLED}, 'id', ${LABELLED_ID}, 'givenAt', ${GIVEN_AT}) END) ORDER BY c.number) AS codes
  FROM label_roll r JOIN (${CODES_OF}) ON c.programme_id = r.programme_id AND c.label_roll_id = r.id
  WHERE r.programme_id = $1 AND r.id = $2 GROUP BY r.programme_id, r.id`;

const INSERT = `
  WITH roll AS (INSERT INTO label_roll (programme_id, id, name, made_by) VALUES ($1, $2, $3, $4) RETURNING id)
  INSERT INTO roll_code (programme_id, code, label_roll_id, number)
  SELECT $1, x.code, roll.id, x.number FROM roll, unnest($5::text[]) WITH ORDINALITY AS x (code, number)`;

@Injectable()
export class RollQueries {
  /** The newest first. */
  async list(sql: UnitOfWork, programmeId: string, { after, limit }: LabelRollQuery): Promise<Part<LabelRollInList>> {
    const [madeAt = null, id = null] = keysAfter(after, 2) ?? [];
    const rows = await sql.rows<LabelRollInList & Record<string, unknown>>(LIST, [programmeId, madeAt, id, limit + 1]);
    return partOf<LabelRollInList>(rows, limit, (roll) => [roll.madeAt, roll.id]);
  }

  /** @throws DomainError `record/unknown` */
  async one(sql: UnitOfWork, programmeId: string, id: string): Promise<LabelRoll> {
    return known(await sql.maybe<LabelRoll & Record<string, unknown>>(ONE, [programmeId, id]));
  }

  async insert(sql: UnitOfWork, { programmeId, personId }: { programmeId: string; personId: string }, { id, name }: NewLabelRoll, codes: readonly string[]): Promise<void> {
    await sql.rows(INSERT, [programmeId, id, name, personId, codes]);
  }
}
