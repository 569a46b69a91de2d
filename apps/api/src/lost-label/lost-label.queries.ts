import { Injectable } from '@nestjs/common';
import type { LabelCandidate, LabelCandidates, LostPlantQuery } from '@sprigline/contract';
import { DomainError, rankCandidates } from '@sprigline/domain';
import { SHOWN, SHOWN_FROM } from '../batch/shown.queries.ts';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';

/** More are no help to somebody who holds one plant in the hand. */
const SHOWN_AT_MOST = 60;
/** An empty batch may have lost its last plants so many days ago; before that, nobody looks for them. */
const LOOKED_FOR_DAYS = 400;

type Row = Omit<LabelCandidate, 'signs'> & Record<string, unknown>;

/** What stands in a place and all that lies in it, and what stood there last and is short of plants. */
const THERE = `
  WITH RECURSIVE within AS (
    SELECT id FROM place WHERE programme_id = $1 AND id = $2
    UNION SELECT p.id FROM within w JOIN place p ON p.programme_id = $1 AND p.parent_id = w.id
  )
  SELECT ${SHOWN}, bundle.foliage, s.not_found + gap.n AS missing
  FROM ${SHOWN_FROM}
  LEFT JOIN bundle ON bundle.programme_id = b.programme_id AND bundle.id = k.bundle_id
  CROSS JOIN LATERAL (
    SELECT coalesce(sum(CASE m.effect WHEN 'unaccounted' THEN m.n ELSE -m.n END), 0)::int AS n
    FROM movement m WHERE m.programme_id = b.programme_id AND m.batch_id = b.id AND m.effect IN ('unaccounted', 'takenBack')) gap
  WHERE b.programme_id = $1 AND s.place_id IN (SELECT id FROM within)
    AND (s.balance > 0 OR (s.last_seen_on > current_date - ${LOOKED_FOR_DAYS} AND gap.n > 0))`;

@Injectable()
export class LostLabelQueries {
  constructor(private readonly database: Database) {}

  /** @throws DomainError `record/unknown` */
  candidates(caller: Caller, placeId: string, plant: LostPlantQuery): Promise<LabelCandidates> {
    return this.database.inTransaction(caller, async (sql) => {
      const place = await sql.maybe('SELECT id FROM place WHERE programme_id = $1 AND id = $2', [caller.programmeId, placeId]);
      if (!place) throw new DomainError('record/unknown', 'no place has this id', { id: placeId });
      const there = await sql.rows<Row>(THERE, [caller.programmeId, placeId]);
      const ranked = rankCandidates({ ...plant, isWholeRow: plant.lost === 'row' }, there.map((row) => ({ ...row, taxonId: row.taxon?.id ?? null })));
      return { candidates: ranked.slice(0, SHOWN_AT_MOST).map(({ candidate: { taxonId: _, ...row }, signs }) => ({ ...row, signs: [...signs] })), of: ranked.length };
    });
  }
}
