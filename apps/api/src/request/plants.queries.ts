import { Injectable } from '@nestjs/common';
import type { PlantRequest, Supply } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { CLAIMS } from './claims.queries.ts';

/** A batch that can give plants, or has some set aside. */
export interface SupplyRow extends Omit<Supply, 'proposed'>, Record<string, unknown> {
  /** The donor tree, or its clone group; null where nobody knows. */
  readonly donor: string | null;
}

/** Each place of the programme with the way to it. A partner's hands are theirs as deep as they go. */
const WALK = `
  SELECT id, name::text, kind, partner_id, ARRAY[name::text] AS path, ARRAY[lpad(walk_order::text, 6, '0') || name::text || id::text] AS way
  FROM place WHERE programme_id = $1 AND parent_id IS NULL
  UNION ALL
  SELECT p.id, p.name::text, p.kind, coalesce(p.partner_id, walk.partner_id), walk.path || p.name::text, walk.way || (lpad(p.walk_order::text, 6, '0') || p.name::text || p.id::text)
  FROM walk JOIN place p ON p.programme_id = $1 AND p.parent_id = walk.id`;

const SUPPLIES = `
WITH RECURSIVE walk AS (${WALK}), claim AS (${CLAIMS})
SELECT b.id AS "batchId", b.container, s.balance, s.held, coalesce(d.clone_group_id, d.id) AS donor,
  (SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.batch_id = b.id ORDER BY l.given_at DESC, l.code LIMIT 1) AS label,
  CASE WHEN d.id IS NOT NULL THEN json_build_object('id', d.id, 'label', d.label) END AS "donorTree",
  CASE WHEN st.id IS NOT NULL THEN json_build_object('id', st.id, 'name', st.name) END AS stand,
  json_build_object('id', walk.id, 'name', walk.name) AS place, walk.path,
  greatest(0, s.balance - coalesce((SELECT sum(c.n) FROM claim c WHERE c.batch_id = b.id AND c.request_id <> $2), 0))::int AS free,
  coalesce(own.n, 0)::int AS reserved, coalesce(own.covered, 0)::int AS covered
FROM batch b JOIN batch_state s ON s.programme_id = $1 AND s.batch_id = b.id
JOIN sticking k ON k.programme_id = $1 AND k.id = b.sticking_id
JOIN walk ON walk.id = s.place_id
LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = k.donor_tree_id
LEFT JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id
LEFT JOIN claim own ON own.batch_id = b.id AND own.request_id = $2
WHERE b.programme_id = $1 AND (own.n IS NOT NULL OR (
  s.balance > 0 AND b.stage = $3 AND k.taxon_id = $4 AND (cardinality($5::uuid[]) = 0 OR d.stand_id = ANY ($5))
  AND walk.kind NOT IN ('site', 'plot', 'partner') AND walk.partner_id IS NULL))
ORDER BY walk.way, label, b.id`;

@Injectable()
export class PlantsQueries {
  /**
   * What can be given to a request, in walking order: of its species and stage, from its
   * stands, in the nursery itself. Mixed batches are left out, since a pick over donor
   * trees cannot count them. What is set aside already is in it in any case.
   */
  async supplies(sql: UnitOfWork, programmeId: string, { id, stage, taxonId, standIds }: PlantRequest): Promise<SupplyRow[]> {
    return sql.rows<SupplyRow>(SUPPLIES, [programmeId, id, stage, taxonId, standIds]);
  }
}
