import { Injectable } from '@nestjs/common';
import type { CurveBy, ReadingFilter } from '@sprigline/contract';
import { type CuttingBatch, type CuttingMovement, followedCuttings, type FollowedCuttings, type Look } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { AS_CORRECTED } from '../due/due-days.queries.ts';
import { chosenStickings } from '../reading/chosen-stickings.queries.ts';

/** How the cuttings of one sticking fared in time. */
export interface FollowedSticking {
  readonly stickingId: string;
  /** The donor tree, or the group of trees that are one clone; null while it is not known. */
  readonly donorId: string | null;
  readonly standId: string | null;
  readonly taxonId: string;
  readonly stuckOn: string;
  /** The group asked for. */
  readonly key: string;
  readonly name: string;
  readonly followed: readonly FollowedCuttings[];
}

type Told = readonly [entryId: string, day: number, rooted: number, look: Look | null, passing: boolean];
type Moved = readonly [entryId: string, day: number, effect: CuttingMovement['effect'], n: number, lastSeen: number | null, undoes: string | null];

interface Row extends Record<string, unknown>, Omit<FollowedSticking, 'followed'> {
  readonly batches: readonly { readonly lastSeen: number | null; readonly movements: readonly Moved[]; readonly told: readonly Told[] | null }[];
}

/** Of each species the history of the whole programme: older ones tell of other recipes and other hands, and what is read must not grow with the years. */
export const LAST_STICKINGS = 1_000;

const NEWEST = `SELECT * FROM (
    SELECT chosen.*, row_number() OVER (PARTITION BY taxon_id ORDER BY stuck_on DESC NULLS LAST, sticking_id) AS nth FROM chosen) each WHERE nth <= ${LAST_STICKINGS}`;

/** From the books of the batches that are cuttings, with days since sticking. Stickings whose day nobody knows are in no curve. */
const BOOKS = `
  SELECT k.sticking_id AS "stickingId", k.donor AS "donorId", k.stand_id AS "standId", k.taxon_id AS "taxonId", k.stuck_on AS "stuckOn", k.key, k.name,
    json_agg(json_build_object('lastSeen', x.last_seen_on - k.stuck_on, 'movements', moved.rows, 'told', told.rows)) AS batches
  FROM followed k
  JOIN batch b ON b.programme_id = $1 AND b.sticking_id = k.sticking_id AND b.stage = 'cutting'
  JOIN batch_state x ON x.programme_id = $1 AND x.batch_id = b.id
  CROSS JOIN LATERAL (
    SELECT json_agg(json_build_array(m.entry_id, m.day - k.stuck_on, m.effect, m.n, m.last_seen - k.stuck_on, m.undoes_id) ORDER BY m.seq) AS rows
    FROM movement m WHERE m.programme_id = $1 AND m.batch_id = b.id) moved
  CROSS JOIN LATERAL (
    SELECT json_agg(json_build_array(e.id, on_day - k.stuck_on, (said ->> 'rooted')::int, said ->> 'look', e.kind <> 'counted')) AS rows
    FROM entry_touch t
    JOIN entry e ON e.programme_id = $1 AND e.id = t.entry_id AND e.kind IN ('counted', 'received', 'moved', 'givenOut') AND NOT e.author_unverified ${AS_CORRECTED}
    WHERE t.programme_id = $1 AND t.batch_id = b.id AND c.kind IS DISTINCT FROM 'withdrawn' AND said ? 'rooted' AND NOT said ? 'sampleOf'
      AND (e.kind <> 'counted' OR said ->> 'batchId' = b.id::text)) told
  WHERE k.stuck_on IS NOT NULL AND moved.rows IS NOT NULL
  GROUP BY k.sticking_id, k.donor, k.stand_id, k.taxon_id, k.stuck_on, k.key, k.name
  ORDER BY k.stuck_on, k.sticking_id`;

/** Cuttings followed from their sticking on: the ground of every curve over time. */
@Injectable()
export class FollowedQueries {
  /** One round trip. A sticking of which nothing was ever booked as cuttings is not among them. */
  async of(sql: UnitOfWork, programmeId: string, filter: ReadingFilter & { readonly by: CurveBy }): Promise<FollowedSticking[]> {
    return this.#read(sql, programmeId, filter, 'SELECT * FROM chosen');
  }

  /** The last stickings of these species in the whole programme, one round trip. */
  async newestOf(sql: UnitOfWork, programmeId: string, taxonIds: readonly string[]): Promise<FollowedSticking[]> {
    const [only, ...others] = taxonIds;
    return only === undefined ? [] : this.#read(sql, programmeId, { by: 'taxon', ...(others.length === 0 && { taxonId: only }) }, NEWEST);
  }

  async #read(sql: UnitOfWork, programmeId: string, filter: ReadingFilter & { readonly by: CurveBy }, which: string): Promise<FollowedSticking[]> {
    const { text, values } = chosenStickings(programmeId, filter);
    const rows = await sql.rows<Row>(`WITH chosen AS MATERIALIZED (${text}), followed AS MATERIALIZED (${which}) ${BOOKS}`, values);
    return rows.map(({ batches, ...sticking }) => ({ ...sticking, followed: followedCuttings(batches.map(batchOf)) }));
  }
}

function batchOf({ lastSeen, movements, told }: Row['batches'][number]): CuttingBatch {
  return {
    lastSeen: lastSeen ?? undefined,
    movements: movements.map(([entryId, day, effect, n, seen, undoes]) => ({ entryId, day, effect, n, lastSeen: seen ?? undefined, undoes: undoes ?? undefined })),
    told: (told ?? []).map(([entryId, day, rooted, look, passing]) => ({ entryId, day, rooted, look: look ?? undefined, passing })),
  };
}
