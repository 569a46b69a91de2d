import type { DeterminationEffects } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { IN_LINE, IN_LINE_FROM } from '../batch/shown.queries.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { REACH, TREE, TREE_FROM } from './reach.queries.ts';

const EFFECTS = `
WITH RECURSIVE ${REACH}, planted AS (
  SELECT coalesce(up.id, p.id) AS id, coalesce(up.name, p.name) AS name, sum(s.balance)::int AS plants
  FROM reached r JOIN batch b ON b.programme_id = $1 AND b.id = r.id AND b.stage = 'planted'
  JOIN batch_state s ON s.programme_id = $1 AND s.batch_id = r.id AND s.balance > 0
  JOIN place p ON p.programme_id = $1 AND p.id = s.place_id
  LEFT JOIN place up ON up.programme_id = $1 AND up.id = p.parent_id AND p.kind = 'plot' AND up.kind = 'site' GROUP BY 1, 2
), trees AS (
  SELECT d.id, ${TREE} AS tree, st.id AS stand_id, st.name AS stand, d.taxon_id, pa.name AS partner FROM ${TREE_FROM}
  LEFT JOIN partner pa ON pa.programme_id = $1 AND pa.id = st.partner_id
  WHERE d.programme_id = $1 AND d.id IN ($3::uuid, (SELECT donor_tree_id FROM sticking WHERE programme_id = $1 AND id = $2))
)
SELECT
  (SELECT tree FROM trees WHERE id = k.donor_tree_id) AS "from", (SELECT tree FROM trees WHERE id = $3::uuid) AS "to",
  (SELECT coalesce(json_agg(json_build_object('id', x.id, 'stuckOn', x.stuck_on, 'generation', x.generation) ORDER BY x.stuck_on, x.id), '[]')
    FROM family f JOIN sticking x ON x.programme_id = $1 AND x.id = f.id) AS stickings,
  (SELECT coalesce(json_agg(${IN_LINE}::jsonb || jsonb_build_object('isMixed', b.sticking_id IS NULL) ORDER BY b.opened_on, b.id), '[]')
    FROM ${IN_LINE_FROM} JOIN reached r ON r.id = b.id WHERE b.programme_id = $1) AS batches,
  ARRAY(SELECT l.code::text FROM label l JOIN reached r ON r.id = l.batch_id WHERE l.programme_id = $1 ORDER BY l.code) AS labels,
  (SELECT coalesce(json_agg(json_build_object('place', json_build_object('id', id, 'name', name), 'plants', plants) ORDER BY name), '[]') FROM planted) AS sites,
  (SELECT coalesce(json_agg(json_build_object('id', stand_id, 'name', stand) ORDER BY stand), '[]') FROM (SELECT DISTINCT stand_id, stand FROM trees) s) AS stands,
  coalesce((SELECT taxon_id FROM trees WHERE id = $3::uuid) <> k.taxon_id, false) AS "taxonChanges",
  json_build_object(
    'lose', (SELECT coalesce(json_agg(partner), '[]') FROM trees WHERE id = k.donor_tree_id AND partner IS NOT NULL
      AND partner NOT IN (SELECT partner FROM trees t WHERE t.id = $3::uuid AND t.partner IS NOT NULL)),
    'gain', (SELECT coalesce(json_agg(partner), '[]') FROM trees WHERE id = $3::uuid AND partner IS NOT NULL
      AND partner NOT IN (SELECT partner FROM trees t WHERE t.id = k.donor_tree_id AND t.partner IS NOT NULL))) AS partners,
  (SELECT coalesce(sum(s.balance), 0)::int FROM own JOIN batch_state s ON s.programme_id = $1 AND s.batch_id = own.id) AS plants
FROM sticking k WHERE k.programme_id = $1 AND k.id = $2`;

/**
 * All that another donor tree would change, in one step.
 *
 * @param donorTreeId left out: it would not be known any more
 * @throws DomainError `record/unknown`, `record/no-such-donor-tree`
 */
export async function effectsOf(sql: UnitOfWork, programmeId: string, stickingId: string, donorTreeId: string | undefined): Promise<DeterminationEffects> {
  const effects = await sql.maybe<DeterminationEffects & Record<string, unknown>>(EFFECTS, [programmeId, stickingId, donorTreeId ?? null]);
  if (!effects) throw new DomainError('record/unknown', 'no sticking has this id', { id: stickingId });
  if (donorTreeId !== undefined && !effects.to) throw new DomainError('record/no-such-donor-tree', 'no donor tree has this id', { id: donorTreeId });
  return effects;
}
