import { Injectable } from '@nestjs/common';
import type { PlantRequest, RequestContent, RequestInList, RequestQuery } from '@sprigline/contract';
import { known } from '../database/known.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';
import { CLAIMS, WENT } from './claims.queries.ts';

const CONTENT = `
  q.id, q.partner_id AS "partnerId", q.outside, q.taxon_id AS "taxonId", q.stage, q.plants, q.most_per_donor AS "mostPerDonor",
  q.asked_on AS "askedOn", q.wanted_on AS "wantedOn", q.place_id AS "placeId", q.permission_id AS "permissionId", q.note, q.state, q.gone_on AS "goneOn",
  ARRAY(SELECT w.stand_id FROM request_stand w WHERE w.programme_id = $1 AND w.request_id = q.id ORDER BY w.stand_id) AS "standIds"`;

type Row<T> = T & Record<string, unknown>;

@Injectable()
export class RequestQueries {
  /** Last asked first. */
  async list(sql: UnitOfWork, programmeId: string, { open, after, limit }: RequestQuery): Promise<Part<RequestInList>> {
    const [day = null, id = null] = keysAfter(after, 2) ?? [];
    const rows = await sql.rows<Row<RequestInList>>(
      `WITH claim AS (${CLAIMS})
       SELECT ${CONTENT},
         (SELECT coalesce(sum(c.n), 0)::int FROM claim c WHERE c.request_id = q.id) AS reserved,
         (SELECT coalesce(sum(c.covered), 0)::int FROM claim c WHERE c.request_id = q.id) AS covered,
         (SELECT coalesce(sum(${WENT}), 0)::int FROM despatch x WHERE x.programme_id = $1 AND x.request_id = q.id) AS gone
       FROM request q WHERE q.programme_id = $1
         AND ($2::text IS NULL OR (q.state IN ('asked', 'promised', 'packed')) = ($2 = 'yes'))
         AND ($3::date IS NULL OR (q.asked_on, q.id) < ($3::date, $4::uuid))
       ORDER BY q.asked_on DESC, q.id DESC LIMIT $5`,
      [programmeId, open ?? null, day, id, limit + 1],
    );
    return partOf<RequestInList>(rows, limit, (request) => [request.askedOn, request.id]);
  }

  /**
   * @param isLocked held until the transaction ends, so that two people at one request take turns
   * @throws DomainError `record/unknown`
   */
  async one(sql: UnitOfWork, programmeId: string, id: string, isLocked = false): Promise<PlantRequest> {
    if (isLocked) known(await sql.maybe('SELECT id FROM request WHERE programme_id = $1 AND id = $2 FOR UPDATE', [programmeId, id]));
    return known(
      await sql.maybe<Row<PlantRequest>>(
        `SELECT ${CONTENT}, (SELECT coalesce(json_agg(json_build_object('batchId', r.batch_id, 'n', r.n) ORDER BY r.batch_id), '[]')
           FROM reservation r WHERE r.programme_id = $1 AND r.request_id = q.id) AS "setAside"
         FROM request q WHERE q.programme_id = $1 AND q.id = $2`,
        [programmeId, id],
      ),
    );
  }

  /** Whether the place is a site or a plot; null where there is none. */
  async isSite(sql: UnitOfWork, programmeId: string, placeId: string): Promise<boolean | null> {
    const place = await sql.maybe<{ kind: string }>('SELECT kind FROM place WHERE programme_id = $1 AND id = $2', [programmeId, placeId]);
    return place ? place.kind === 'site' || place.kind === 'plot' : null;
  }

  async insert(sql: UnitOfWork, programmeId: string, id: string, content: RequestContent): Promise<void> {
    await sql.rows(
      `WITH made AS (
         INSERT INTO request (programme_id, id, partner_id, outside, taxon_id, stage, plants, most_per_donor, asked_on, wanted_on, place_id, permission_id, note)
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13))
       INSERT INTO request_stand (programme_id, request_id, stand_id) SELECT $1, $2, unnest($14::uuid[])`,
      valuesOf(programmeId, id, content),
    );
  }

  async update(sql: UnitOfWork, programmeId: string, id: string, content: RequestContent): Promise<void> {
    await sql.rows(
      `WITH changed AS (
         UPDATE request SET partner_id = $3, outside = $4, taxon_id = $5, stage = $6, plants = $7, most_per_donor = $8, asked_on = $9, wanted_on = $10,
           place_id = $11, permission_id = $12, note = $13 WHERE programme_id = $1 AND id = $2
       ), left_out AS (
         DELETE FROM request_stand WHERE programme_id = $1 AND request_id = $2 AND stand_id <> ALL ($14::uuid[])
       )
       INSERT INTO request_stand (programme_id, request_id, stand_id) SELECT $1, $2, unnest($14::uuid[]) ON CONFLICT DO NOTHING`,
      valuesOf(programmeId, id, content),
    );
  }

  async setState(sql: UnitOfWork, programmeId: string, id: string, state: string, goneOn: string | null = null): Promise<void> {
    await sql.rows('UPDATE request SET state = $3, gone_on = $4 WHERE programme_id = $1 AND id = $2', [programmeId, id, state, goneOn]);
  }

  /** Sets plants aside, and lets go of all others that were set aside for the request. */
  async replaceReservations(sql: UnitOfWork, programmeId: string, id: string, lines: PlantRequest['setAside']): Promise<void> {
    await sql.rows(
      `WITH line AS (SELECT * FROM jsonb_to_recordset($3::jsonb) AS l ("batchId" uuid, n int)),
         freed AS (DELETE FROM reservation WHERE programme_id = $1 AND request_id = $2 AND batch_id NOT IN (SELECT "batchId" FROM line))
       INSERT INTO reservation (programme_id, request_id, batch_id, n) SELECT $1, $2, "batchId", n FROM line
       ON CONFLICT (programme_id, request_id, batch_id) DO UPDATE SET n = excluded.n`,
      [programmeId, id, JSON.stringify(lines)],
    );
  }
}

const valuesOf = (programmeId: string, id: string, content: RequestContent): unknown[] => [
  programmeId, id, content.partnerId, content.outside, content.taxonId, content.stage, content.plants, content.mostPerDonor, content.askedOn, content.wantedOn,
  content.placeId, content.permissionId, content.note, [...new Set(content.standIds)],
];
