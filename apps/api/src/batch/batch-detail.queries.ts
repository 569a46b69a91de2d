import { Injectable } from '@nestjs/common';
import type { Batch, BatchInList, BooksShown, FamilyLine, StayShown } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { IN_LINE, IN_LINE_FROM, SHOWN, SHOWN_FROM, STAND_SHOWN } from './shown.queries.ts';

/** A batch without its history. */
export interface BatchDetail extends BatchInList, Record<string, unknown> {
  readonly labels: string[];
  readonly container: string | null;
  readonly medium: string | null;
  readonly setAside: Batch['setAside'];
  readonly rootedEver: number;
  readonly line: FamilyLine;
  readonly stays: StayRow[];
}

/** Where it stood. The place is null to whoever may not see it. */
export type StayRow = Pick<StayShown, 'place' | 'from' | 'until'> & { readonly placeId: string };

const ALL = (select: string) => `(SELECT coalesce(json_agg(x.link ORDER BY x.nth), '[]') FROM (${select}) x)`;

const ANCESTORS = `
  WITH RECURSIVE up AS (
    SELECT b.parent_id AS id, 1 AS step UNION ALL
    SELECT a.parent_id, up.step + 1 FROM up JOIN batch a ON a.programme_id = $1 AND a.id = up.id
  ) SELECT up.id, up.step FROM up WHERE up.id IS NOT NULL`;

const LINE = `json_build_object(
  'stand', ${STAND_SHOWN},
  'donorTree', CASE WHEN d.id IS NOT NULL THEN json_build_object('id', d.id, 'label', d.label) END,
  'candidates', (SELECT coalesce(json_agg(json_build_object('id', dc.id, 'label', dc.label) ORDER BY dc.label), '[]')
    FROM sticking_candidate c JOIN donor_tree dc ON dc.programme_id = $1 AND dc.id = c.donor_tree_id
    WHERE c.programme_id = $1 AND c.sticking_id = k.id AND k.donor_tree_id IS NULL),
  'trip', (SELECT json_build_object('id', tr.id, 'wentOn', tr.went_on) FROM bundle bu JOIN trip tr ON tr.programme_id = $1 AND tr.id = bu.trip_id
    WHERE bu.programme_id = $1 AND bu.id = k.bundle_id),
  'bundle', (SELECT json_build_object('id', bu.id, 'cuttings', bu.cuttings, 'shoot', bu.shoot, 'foliage', bu.foliage, 'base', bu.base)
    FROM bundle bu WHERE bu.programme_id = $1 AND bu.id = k.bundle_id),
  'sticking', CASE WHEN k.id IS NOT NULL THEN json_build_object('id', k.id, 'stuckOn', k.stuck_on, 'generation', k.generation,
    'secondTryOfId', k.second_try_of_id, 'fromBatchId', k.from_batch_id,
    'recipe', (SELECT json_build_object('versionId', v.id, 'name', r.name, 'version', v.version)
      FROM recipe_version v JOIN recipe r ON r.programme_id = $1 AND r.id = v.recipe_id WHERE v.programme_id = $1 AND v.id = k.recipe_version_id)) END,
  'ancestors', ${ALL(`SELECT a.link, -u.step AS nth FROM (${ANCESTORS}) u JOIN LATERAL (SELECT ${IN_LINE} AS link FROM ${IN_LINE_FROM} WHERE b.programme_id = $1 AND b.id = u.id) a ON true`)},
  'parts', (SELECT coalesce(json_agg(a.link::jsonb || jsonb_build_object('n', m.n)), '[]') FROM mixed_part m
    JOIN LATERAL (SELECT ${IN_LINE} AS link FROM ${IN_LINE_FROM} WHERE b.programme_id = $1 AND b.id = m.from_batch_id) a ON true
    WHERE m.programme_id = $1 AND m.batch_id = b.id),
  'children', ${ALL(`SELECT a.link, a.opened_on AS nth FROM (SELECT id FROM batch c WHERE c.programme_id = $1 AND c.parent_id = b.id
      UNION SELECT batch_id FROM mixed_part m WHERE m.programme_id = $1 AND m.from_batch_id = b.id) c
    JOIN LATERAL (SELECT ${IN_LINE} AS link, b.opened_on FROM ${IN_LINE_FROM} WHERE b.programme_id = $1 AND b.id = c.id) a ON true`)})`;

const STAYS = `(SELECT coalesce(json_agg(json_build_object('placeId', y.place_id,
    'place', (SELECT json_build_object('id', yp.id, 'name', yp.name) FROM place yp WHERE yp.programme_id = $1 AND yp.id = y.place_id),
    'from', y.from_day, 'until', y.to_day) ORDER BY y.seq), '[]')
  FROM stay y WHERE y.programme_id = $1 AND y.batch_id = b.id)`;

const SET_ASIDE = `(SELECT coalesce(json_agg(json_build_object('requestId', q.id, 'who', coalesce(q.outside, w.name), 'n', r.n) ORDER BY q.asked_on, q.id), '[]')
  FROM reservation r JOIN request q ON q.programme_id = $1 AND q.id = r.request_id LEFT JOIN partner w ON w.programme_id = $1 AND w.id = q.partner_id
  WHERE r.programme_id = $1 AND r.batch_id = b.id)`;

@Injectable()
export class BatchDetailQueries {
  /** @throws DomainError `batch/unknown` */
  async one(sql: UnitOfWork, programmeId: string, batchId: string): Promise<BatchDetail> {
    const batch = await sql.maybe<BatchDetail>(
      `SELECT ${SHOWN}, b.container, b.medium, s.rooted_ever AS "rootedEver",
         ARRAY(SELECT l.code::text FROM label l WHERE l.programme_id = $1 AND l.batch_id = b.id ORDER BY l.given_at DESC, l.code) AS labels,
         ${LINE} AS line, ${STAYS} AS stays, ${SET_ASIDE} AS "setAside"
       FROM ${SHOWN_FROM} WHERE b.programme_id = $1 AND b.id = $2`,
      [programmeId, batchId],
    );
    if (!batch) throw new DomainError('batch/unknown', 'no batch has this id', { batchId });
    return batch;
  }
}

export const booksOf = (batch: BatchDetail): BooksShown => ({
  balance: batch.balance,
  rootedNow: batch.rootedNow ?? undefined,
  rootedEver: batch.rootedEver,
  lastSeen: batch.lastSeenOn !== null && batch.lastLook !== null ? { day: batch.lastSeenOn, look: batch.lastLook } : undefined,
  notFound: batch.notFound,
  held: batch.held,
  unconfirmed: batch.unconfirmed,
  calledOn: batch.calledOn ?? undefined,
});
