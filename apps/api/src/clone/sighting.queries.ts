import type { NewSighting, Sighting } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';

/**
 * Writes in what state a tree was seen; the tree follows the last sighting by its day,
 * and what was written at the tree itself as seen later.
 *
 * @throws DomainError `record/unknown`, `record/id-reused`
 */
export async function writeSighting(sql: UnitOfWork, caller: Caller, treeId: string, said: NewSighting): Promise<void> {
  const there = await sql.maybe('SELECT 1 AS there FROM donor_tree WHERE programme_id = $1 AND id = $2 FOR UPDATE', [caller.programmeId, treeId]);
  if (!there) throw new DomainError('record/unknown', 'no donor tree has this id', { id: treeId });

  const values = [caller.programmeId, said.id, treeId, said.seenOn, said.state, said.note, caller.personId];
  const row = await sql.one<{ same: boolean }>(
    `WITH added AS (
       INSERT INTO tree_sighting (programme_id, id, donor_tree_id, seen_on, state, note, by_person_id)
       VALUES ($1, $2, $3, $4, $5, $6, $7) ON CONFLICT (programme_id, id) DO NOTHING RETURNING id
     ), followed AS (
       UPDATE donor_tree d SET state = $5, state_seen_on = $4::date FROM added
       WHERE d.programme_id = $1 AND d.id = $3 AND (d.state_seen_on IS NULL OR d.state_seen_on <= $4::date)
     ) SELECT EXISTS (SELECT FROM added) OR EXISTS (SELECT FROM tree_sighting WHERE programme_id = $1 AND id = $2 AND donor_tree_id = $3 AND seen_on = $4
       AND state = $5 AND note IS NOT DISTINCT FROM $6 AND by_person_id = $7) AS same`,
    values,
  );
  if (!row.same) throw new DomainError('record/id-reused', 'that id was used for another sighting: make a new one');
}

/** @throws DomainError `record/unknown` */
export async function sightingsOf(sql: UnitOfWork, programmeId: string, treeId: string): Promise<Sighting[]> {
  const tree = await sql.maybe<{ said: Sighting[] }>(
    `SELECT (SELECT coalesce(json_agg(json_build_object('id', s.id, 'seenOn', s.seen_on, 'state', s.state, 'by', p.name, 'note', s.note)
         ORDER BY s.seen_on DESC, s.written_at DESC, s.id DESC), '[]')
       FROM tree_sighting s JOIN person p ON p.programme_id = $1 AND p.id = s.by_person_id WHERE s.programme_id = $1 AND s.donor_tree_id = d.id) AS said
     FROM donor_tree d WHERE d.programme_id = $1 AND d.id = $2`,
    [programmeId, treeId],
  );
  if (!tree) throw new DomainError('record/unknown', 'no donor tree has this id', { id: treeId });
  return tree.said;
}
