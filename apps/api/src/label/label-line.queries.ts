import { Injectable } from '@nestjs/common';
import type { LabelChoice, LabelLine } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';

/** Places in walking order, each with the way to it. */
const WALK = `
  WITH RECURSIVE walk AS (
    SELECT id, parent_id, kind, closed_on, ARRAY[name::text] AS path, ARRAY[lpad(walk_order::text, 6, '0'), name::text, id::text] AS way
    FROM place WHERE programme_id = $1 AND parent_id IS NULL
    UNION ALL
    SELECT p.id, p.parent_id, p.kind, p.closed_on, walk.path || p.name::text, walk.way || lpad(p.walk_order::text, 6, '0') || p.name::text || p.id::text
    FROM walk JOIN place p ON p.programme_id = $1 AND p.parent_id = walk.id
  )`;

const CODE = (target: string): string => `(SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.${target} ORDER BY l.given_at DESC, l.code LIMIT 1)`;

/** Every statement takes the same: programme, place, stand, ids, how many. */
const LINES: Readonly<Record<LabelChoice['of'], string>> = {
  batches: `${WALK}
    SELECT 'batch' AS "is", b.id, ${CODE('batch_id = b.id')} AS code, d.label AS "donorTree", t.scientific_name AS taxon, st.name AS stand,
      b.stage, k.stuck_on AS "stuckOn", b.opened_on AS "openedOn", walk.path
    FROM walk
    JOIN batch_state s ON s.programme_id = $1 AND s.place_id = walk.id
    JOIN batch b ON b.programme_id = $1 AND b.id = s.batch_id
    LEFT JOIN sticking k ON k.programme_id = $1 AND k.id = b.sticking_id
    LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = k.donor_tree_id
    LEFT JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id
    LEFT JOIN taxon t ON t.programme_id = $1 AND t.id = k.taxon_id
    WHERE ($2::uuid IS NULL OR $2::text = ANY (walk.way)) AND ($3::uuid IS NULL OR d.stand_id = $3) AND ($4::uuid[] IS NULL OR b.id = ANY ($4))
      AND (s.balance > 0 OR b.id = ANY ($4))
    ORDER BY walk.way, substring(b.rows FROM '^\\d+')::int NULLS LAST, d.label, k.stuck_on, b.id LIMIT $5`,
  donorTrees: `
    SELECT 'donorTree' AS "is", d.id, ${CODE('donor_tree_id = d.id')} AS code, d.label AS "donorTree", t.scientific_name AS taxon, st.name AS stand,
      NULL::stage AS stage, NULL::date AS "stuckOn", NULL::date AS "openedOn", ARRAY[]::text[] AS path
    FROM donor_tree d
    JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id
    JOIN taxon t ON t.programme_id = $1 AND t.id = d.taxon_id
    WHERE d.programme_id = $1 AND $2::uuid IS NULL AND ($3::uuid IS NULL OR d.stand_id = $3) AND ($4::uuid[] IS NULL OR d.id = ANY ($4))
    ORDER BY st.name, d.label, d.id LIMIT $5`,
  places: `${WALK}
    SELECT 'place' AS "is", walk.id, ${CODE('place_id = walk.id')} AS code, NULL::text AS "donorTree", NULL::text AS taxon, NULL::text AS stand,
      NULL::stage AS stage, NULL::date AS "stuckOn", NULL::date AS "openedOn", walk.path
    FROM walk
    WHERE ($2::uuid IS NULL OR $2::text = ANY (walk.way)) AND $3::uuid IS NULL AND ($4::uuid[] IS NULL OR walk.id = ANY ($4))
      AND (walk.closed_on IS NULL OR walk.id = ANY ($4))
    ORDER BY walk.way LIMIT $5`,
};

@Injectable()
export class LabelLineQueries {
  /** What the labels of these things say, in walking order, the same before and after a label is given; trees by stand and label. @param most how many at most */
  list(sql: UnitOfWork, programmeId: string, { of, placeId, standId, ids }: LabelChoice, most: number): Promise<LabelLine[]> {
    return sql.rows<LabelLine & Record<string, unknown>>(LINES[of], [programmeId, placeId ?? null, standId ?? null, ids ?? null, most]);
  }
}
