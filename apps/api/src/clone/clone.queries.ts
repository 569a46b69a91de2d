import type { CloneGroup, NewCloneStatement } from '@sprigline/contract';
import { type ClonePair, DomainError } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';

/** Which statement on a pair holds: the last by its day, then by when it was written. */
const LAST_FIRST = 'c.said_on DESC, c.written_at DESC, c.id DESC';

/**
 * @throws DomainError `record/unknown`, `record/no-such-donor-tree`, `clone/other-species`, `record/id-reused`
 */
export async function writeStatement(sql: UnitOfWork, caller: Caller, treeId: string, said: NewCloneStatement): Promise<void> {
  const trees = await sql.rows<{ id: string; taxon: string }>('SELECT id, taxon_id AS taxon FROM donor_tree WHERE programme_id = $1 AND id IN ($2, $3)', [caller.programmeId, treeId, said.otherTreeId]);
  const [tree, other] = [treeId, said.otherTreeId].map((id) => trees.find((one) => one.id === id));
  if (!tree) throw new DomainError('record/unknown', 'no donor tree has this id', { id: treeId });
  if (!other) throw new DomainError('record/no-such-donor-tree', 'no donor tree has this id', { id: said.otherTreeId });
  if (said.isSame && tree.taxon !== other.taxon) throw new DomainError('clone/other-species', 'trees of two species are never one clone: look at the species of both');

  const [low, high] = treeId < said.otherTreeId ? [treeId, said.otherTreeId] : [said.otherTreeId, treeId];
  const values = [caller.programmeId, said.id, low, high, said.isSame, said.saidOn, said.evidence, caller.personId];
  const row = await sql.one<{ same: boolean }>(
    `WITH added AS (
       INSERT INTO clone_statement (programme_id, id, donor_tree_id, other_tree_id, is_same, said_on, evidence, by_person_id)
       VALUES ($1, $2, $3, $4, $5, $6, $7, $8) ON CONFLICT (programme_id, id) DO NOTHING RETURNING id
     ), noted AS (
       INSERT INTO audit (programme_id, person_id, delivered_by, act, subject_kind, subject_id, facts)
       SELECT $1, $8::uuid, $9, 'donor-tree.clone-stated', 'donor-tree', $3, jsonb_build_object('otherTreeId', $4::uuid, 'isSame', $5::boolean) FROM added
     ) SELECT EXISTS (SELECT FROM added) OR EXISTS (SELECT FROM clone_statement WHERE programme_id = $1 AND id = $2 AND donor_tree_id = $3 AND other_tree_id = $4
       AND is_same = $5 AND said_on = $6 AND evidence = $7) AS same`,
    [...values, `session ${caller.sessionId}`],
  );
  if (!row.same) throw new DomainError('record/id-reused', 'that id was used for another statement: make a new one');
}

/** The statement that holds, of every pair that one was made on. */
export function pairsOf(sql: UnitOfWork, programmeId: string): Promise<(ClonePair & { isSame: boolean } & Record<string, unknown>)[]> {
  return sql.rows(
    `SELECT DISTINCT ON (c.donor_tree_id, c.other_tree_id) c.donor_tree_id AS tree, c.other_tree_id AS other, c.is_same AS "isSame"
     FROM clone_statement c WHERE c.programme_id = $1 ORDER BY c.donor_tree_id, c.other_tree_id, ${LAST_FIRST}`,
    [programmeId],
  );
}

/** Puts each tree into its group, or out of all groups. */
export async function groupTrees(sql: UnitOfWork, programmeId: string, trees: readonly { readonly id: string; readonly groupId: string | null }[]): Promise<void> {
  await sql.rows(
    `UPDATE donor_tree d SET clone_group_id = g."groupId" FROM json_to_recordset($2) AS g(id uuid, "groupId" uuid)
     WHERE d.programme_id = $1 AND d.id = g.id AND d.clone_group_id IS DISTINCT FROM g."groupId"`,
    [programmeId, JSON.stringify(trees)],
  );
}

const labelled = (tree: string) => `json_build_object('id', ${tree}.id, 'label', ${tree}.label)`;

const GROUP = `
WITH mine AS (
  SELECT x.id, x.label FROM donor_tree d JOIN donor_tree x ON x.programme_id = $1 AND x.clone_group_id = d.clone_group_id WHERE d.programme_id = $1 AND d.id = $2
), said AS (
  SELECT c.*, row_number() OVER (PARTITION BY c.donor_tree_id, c.other_tree_id ORDER BY ${LAST_FIRST}) = 1 AS holds FROM clone_statement c
  WHERE c.programme_id = $1 AND (c.donor_tree_id IN (SELECT id FROM mine UNION SELECT $2::uuid) OR c.other_tree_id IN (SELECT id FROM mine UNION SELECT $2::uuid))
)
SELECT (SELECT coalesce(json_agg(${labelled('m')} ORDER BY m.label), '[]') FROM mine m) AS trees,
  (SELECT coalesce(json_agg(json_build_object('id', c.id, 'tree', ${labelled('a')}, 'other', ${labelled('b')}, 'isSame', c.is_same, 'saidOn', c.said_on, 'by', p.name,
      'evidence', c.evidence, 'holds', c.holds) ORDER BY ${LAST_FIRST}), '[]')
    FROM said c JOIN donor_tree a ON a.programme_id = $1 AND a.id = c.donor_tree_id JOIN donor_tree b ON b.programme_id = $1 AND b.id = c.other_tree_id
    LEFT JOIN person p ON p.programme_id = $1 AND p.id = c.by_person_id) AS said,
  (SELECT json_build_object('trees', count(*), 'clones', count(DISTINCT coalesce(x.clone_group_id, x.id)), 'assumedDistinct', count(*) FILTER (WHERE x.clone_group_id IS NULL))
    FROM donor_tree x WHERE x.programme_id = $1 AND x.stand_id = d.stand_id AND x.taxon_id = d.taxon_id) AS stand
FROM donor_tree d WHERE d.programme_id = $1 AND d.id = $2`;

/** @throws DomainError `record/unknown` */
export async function groupOf(sql: UnitOfWork, programmeId: string, treeId: string): Promise<CloneGroup> {
  const group = await sql.maybe<CloneGroup & Record<string, unknown>>(GROUP, [programmeId, treeId]);
  if (!group) throw new DomainError('record/unknown', 'no donor tree has this id', { id: treeId });
  return group;
}
