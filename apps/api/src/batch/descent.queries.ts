import type { Descent } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { IN_LINE, IN_LINE_FROM } from './shown.queries.ts';

const DESCENT = `
WITH RECURSIVE mine AS (
  SELECT b.id, b.stage, b.sticking_id, s.balance, s.place_id FROM sticking k
  JOIN batch b ON b.programme_id = $1 AND b.sticking_id = k.id JOIN batch_state s ON s.programme_id = $1 AND s.batch_id = b.id
  WHERE k.programme_id = $1 AND k.donor_tree_id = $2
), mixtures AS (
  SELECT m.batch_id AS id FROM mixed_part m JOIN mine ON mine.id = m.from_batch_id WHERE m.programme_id = $1
  UNION SELECT b.id FROM sticking_candidate c JOIN sticking k ON k.programme_id = $1 AND k.id = c.sticking_id AND k.donor_tree_id IS NULL
    JOIN batch b ON b.programme_id = $1 AND b.sticking_id = k.id WHERE c.programme_id = $1 AND c.donor_tree_id = $2
  UNION SELECT next.id FROM mixtures JOIN LATERAL (
    SELECT b.id FROM batch b WHERE b.programme_id = $1 AND b.parent_id = mixtures.id AND b.sticking_id IS NULL
    UNION SELECT m.batch_id FROM mixed_part m WHERE m.programme_id = $1 AND m.from_batch_id = mixtures.id) next ON true
), planted AS (
  SELECT coalesce(up.id, p.id) AS id, coalesce(up.name, p.name) AS name, sum(mine.balance)::int AS plants
  FROM mine JOIN place p ON p.programme_id = $1 AND p.id = mine.place_id
  LEFT JOIN place up ON up.programme_id = $1 AND up.id = p.parent_id AND p.kind = 'plot' AND up.kind = 'site'
  WHERE mine.stage = 'planted' AND mine.balance > 0 GROUP BY 1, 2
)
SELECT json_build_object('id', d.id, 'label', d.label, 'stand', json_build_object('id', st.id, 'name', st.name)) AS "donorTree",
  (SELECT coalesce(json_agg(json_build_object(
      'id', k.id, 'stuckOn', k.stuck_on, 'generation', k.generation, 'secondTryOfId', k.second_try_of_id,
      'recipe', (SELECT json_build_object('versionId', v.id, 'name', r.name, 'version', v.version)
        FROM recipe_version v JOIN recipe r ON r.programme_id = $1 AND r.id = v.recipe_id WHERE v.programme_id = $1 AND v.id = k.recipe_version_id),
      'opened', (SELECT coalesce(sum(m.n), 0) FROM movement m JOIN mine ON mine.id = m.batch_id
        WHERE m.programme_id = $1 AND mine.sticking_id = k.id AND m.effect IN ('stuck', 'received', 'restuckIn')),
      'batches', (SELECT coalesce(json_agg(${IN_LINE} ORDER BY b.opened_on, b.id), '[]') FROM ${IN_LINE_FROM} WHERE b.programme_id = $1 AND b.sticking_id = k.id)
    ) ORDER BY k.stuck_on, k.id), '[]') FROM sticking k WHERE k.programme_id = $1 AND k.donor_tree_id = $2) AS stickings,
  (SELECT coalesce(json_object_agg(stage, n), '{}') FROM (SELECT stage, sum(balance)::int AS n FROM mine GROUP BY stage HAVING sum(balance) > 0) x) AS "plantsByStage",
  (SELECT coalesce(json_agg(json_build_object('place', json_build_object('id', id, 'name', name), 'plants', plants) ORDER BY name), '[]') FROM planted) AS sites,
  (SELECT coalesce(json_agg(${IN_LINE} ORDER BY b.opened_on, b.id), '[]') FROM ${IN_LINE_FROM} JOIN mixtures ON mixtures.id = b.id WHERE b.programme_id = $1) AS mixtures
FROM donor_tree d JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id
WHERE d.programme_id = $1 AND d.id = $2`;

/**
 * All that came of a wild tree, in one step.
 *
 * @throws DomainError `record/unknown`
 */
export async function descentOf(sql: UnitOfWork, programmeId: string, donorTreeId: string): Promise<Descent> {
  const descent = await sql.maybe<Descent & Record<string, unknown>>(DESCENT, [programmeId, donorTreeId]);
  if (!descent) throw new DomainError('record/unknown', 'no donor tree has this id', { id: donorTreeId });
  return descent;
}
