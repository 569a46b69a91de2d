import type { UnitOfWork } from '../database/unit-of-work.ts';

/**
 * What a determination reaches, as CTEs: `family`, the sticking `$2` with what was stuck
 * again or cut from its plants since; `own`, their batches; `reached`, these and the mixed
 * batches that hold some of them. The programme is `$1`.
 */
export const REACH = `
  family AS (
    SELECT id FROM sticking WHERE programme_id = $1 AND id = $2
    UNION SELECT k.id FROM family f JOIN sticking k ON k.programme_id = $1 AND (k.second_try_of_id = f.id
      OR k.from_batch_id IN (SELECT b.id FROM batch b WHERE b.programme_id = $1 AND b.sticking_id = f.id))
  ), own AS (
    SELECT b.id FROM family f JOIN batch b ON b.programme_id = $1 AND b.sticking_id = f.id
  ), reached AS (
    SELECT id FROM own
    UNION SELECT next.id FROM reached r JOIN LATERAL (
      SELECT m.batch_id AS id FROM mixed_part m WHERE m.programme_id = $1 AND m.from_batch_id = r.id
      UNION ALL SELECT b.id FROM batch b WHERE b.programme_id = $1 AND b.parent_id = r.id AND b.sticking_id IS NULL) next ON true
  )`;

/** Ids of all stickings and batches that a determination reaches; none for a sticking that is not there. */
export async function reachOf(sql: UnitOfWork, programmeId: string, stickingId: string): Promise<string[]> {
  const rows = await sql.rows<{ id: string }>(`WITH RECURSIVE ${REACH} SELECT id FROM family UNION SELECT id FROM reached`, [programmeId, stickingId]);
  return rows.map(({ id }) => id);
}

/** A donor tree with its stand and species, as one JSON value. Needs the joins of TREE_FROM. */
export const TREE = `json_build_object('id', d.id, 'label', d.label, 'stand', json_build_object('id', st.id, 'name', st.name), 'taxon', json_build_object('id', t.id, 'name', t.scientific_name))`;
export const TREE_FROM = `donor_tree d JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id JOIN taxon t ON t.programme_id = $1 AND t.id = d.taxon_id`;
