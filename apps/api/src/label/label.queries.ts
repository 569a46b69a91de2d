import { Injectable } from '@nestjs/common';
import type { Label, Labelled } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';

const AT = (moment: string): string => `to_char(${moment} AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`;

/** What a label `l` is on: one of the three, as a constraint says. */
export const LABELLED = `CASE WHEN l.batch_id IS NOT NULL THEN 'batch' WHEN l.donor_tree_id IS NOT NULL THEN 'donorTree' ELSE 'place' END`;
export const LABELLED_ID = 'coalesce(l.batch_id, l.donor_tree_id, l.place_id)';
export const GIVEN_AT = AT('l.given_at');

const BY_CODE = `
  SELECT code, is_on AS "is", id, given_at AS "givenAt" FROM (
    SELECT l.code::text AS code, ${LABELLED} AS is_on, ${LABELLED_ID} AS id, ${GIVEN_AT} AS given_at, 0 AS rank
    FROM label l WHERE l.programme_id = $1 AND lower(l.code) IN (lower($2), lower($3))
    UNION ALL
    SELECT c.code::text, 'unclaimed', c.label_roll_id, NULL, 1 FROM roll_code c WHERE c.programme_id = $1 AND c.code = $3
  ) AS found ORDER BY rank, code <> $2, code <> $3 LIMIT 1`;

/** One statement, so that no label is without its line in the trail. */
const GIVE = `
  WITH asked AS (
    SELECT code, id FROM unnest($2::text[], $3::uuid[]) AS x (code, id)
  ), given AS (
    INSERT INTO label (programme_id, code, batch_id, donor_tree_id, place_id)
    SELECT $1, code, CASE WHEN $4 = 'batch' THEN id END, CASE WHEN $4 = 'donorTree' THEN id END, CASE WHEN $4 = 'place' THEN id END FROM asked
  )
  INSERT INTO audit (programme_id, id, person_id, delivered_by, act, subject_kind, subject_id, facts)
  SELECT $1, gen_random_uuid(), $5, $6, $7 || '.labelled', $7, id, jsonb_build_object('label', code) FROM asked`;

/** As the trail and the feed of changes name them. */
const KIND: Readonly<Record<Labelled, string>> = { batch: 'batch', donorTree: 'donor-tree', place: 'place' };

@Injectable()
export class LabelQueries {
  /**
   * As it is written, or, since thumbs are big, in other letters of the same.
   *
   * @param kept the same as it would be kept: a drawn code is found by it
   */
  byCode(sql: UnitOfWork, programmeId: string, typed: string, kept: string): Promise<Label | undefined> {
    return sql.maybe<Label & Record<string, unknown>>(BY_CODE, [programmeId, typed, kept]);
  }

  /** Puts each code on its thing; all of one kind. */
  async give(sql: UnitOfWork, by: { programmeId: string; personId: string; deliveredBy: string }, is: Labelled, given: readonly { code: string; id: string }[]): Promise<void> {
    await sql.rows(GIVE, [by.programmeId, given.map(({ code }) => code), given.map(({ id }) => id), is, by.personId, by.deliveredBy, KIND[is]]);
  }

  /** Which of these codes the programme has had before, drawn or given. */
  async taken(sql: UnitOfWork, programmeId: string, codes: readonly string[]): Promise<Set<string>> {
    const rows = await sql.rows<{ code: string }>(
      `SELECT code::text AS code FROM roll_code WHERE programme_id = $1 AND code = ANY ($2)
       UNION SELECT upper(code) FROM label WHERE programme_id = $1 AND lower(code) = ANY (SELECT lower(x) FROM unnest($2::text[]) x)`,
      [programmeId, codes],
    );
    return new Set(rows.map(({ code }) => code));
  }
}
