import type { Determinations, NewDetermination } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';
import { REACH, TREE, TREE_FROM } from './reach.queries.ts';

/** Which determination of a sticking holds: the last by its day, then by when it was written. */
const LAST_FIRST = 'x.determined_on DESC, x.written_at DESC, x.id DESC';

const SAID = `
SELECT json_build_object('id', k.id, 'stuckOn', k.stuck_on, 'donorTree', (SELECT ${TREE} FROM ${TREE_FROM} WHERE d.programme_id = $1 AND d.id = k.donor_tree_id),
    'taxon', (SELECT json_build_object('id', t.id, 'name', t.scientific_name) FROM taxon t WHERE t.programme_id = $1 AND t.id = k.taxon_id)) AS sticking,
  (SELECT coalesce(json_agg(json_build_object('id', x.id, 'donorTree', CASE WHEN d.id IS NOT NULL THEN json_build_object('id', d.id, 'label', d.label) END,
      'determinedOn', x.determined_on, 'by', p.name, 'evidence', x.evidence, 'holds', x.nth = 1) ORDER BY x.nth), '[]')
    FROM (SELECT x.*, row_number() OVER (ORDER BY ${LAST_FIRST}) AS nth FROM determination x WHERE x.programme_id = $1 AND x.sticking_id = k.id) x
    LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = x.donor_tree_id LEFT JOIN person p ON p.programme_id = $1 AND p.id = x.by_person_id) AS said
FROM sticking k WHERE k.programme_id = $1 AND k.id = $2`;

/** @throws DomainError `record/unknown` */
export async function saidOf(sql: UnitOfWork, programmeId: string, stickingId: string): Promise<Determinations> {
  const said = await sql.maybe<Determinations & Record<string, unknown>>(SAID, [programmeId, stickingId]);
  if (!said) throw new DomainError('record/unknown', 'no sticking has this id', { id: stickingId });
  return said;
}

/** The id of the same determination at another sticking of the family: a UUID of version 8, made of both. */
const ID_AT = `overlay(overlay(encode(sha256(($3::uuid::text || '/' || f.id::text)::bytea), 'hex') PLACING '8' FROM 13) PLACING '8' FROM 17)`;

/**
 * Writes the determination at the sticking and at what came of it, and in the audit trail.
 *
 * @returns false when one with that id was there before
 */
export async function writeDetermination(sql: UnitOfWork, caller: Caller, stickingId: string, said: NewDetermination): Promise<boolean> {
  const facts = { donorTreeId: said.donorTreeId, determinedOn: said.determinedOn };
  const { written } = await sql.one<{ written: number }>(
    `WITH RECURSIVE ${REACH}, added AS (
       INSERT INTO determination (programme_id, id, sticking_id, donor_tree_id, determined_on, evidence, by_person_id)
       SELECT $1, CASE WHEN f.id = $2 THEN $3::uuid ELSE left(${ID_AT}, 32)::uuid END, f.id, $4::uuid, $5::date, $6, $7::uuid FROM family f
       ON CONFLICT (programme_id, id) DO NOTHING RETURNING sticking_id
     ), noted AS (
       INSERT INTO audit (programme_id, person_id, delivered_by, act, subject_kind, subject_id, facts)
       SELECT $1, $7::uuid, $8, 'sticking.determined', 'sticking', $2, $9::jsonb FROM added WHERE sticking_id = $2
     ) SELECT count(*)::int AS written FROM added WHERE sticking_id = $2`,
    [caller.programmeId, stickingId, said.id, said.donorTreeId, said.determinedOn, said.evidence, caller.personId, `session ${caller.sessionId}`, JSON.stringify(facts)],
  );
  return written > 0;
}

export async function isWrittenSo(sql: UnitOfWork, caller: Caller, stickingId: string, said: NewDetermination): Promise<boolean> {
  const same = await sql.maybe(
    `SELECT 1 AS there FROM determination WHERE programme_id = $1 AND id = $2 AND sticking_id = $3 AND donor_tree_id IS NOT DISTINCT FROM $4::uuid AND determined_on = $5 AND evidence = $6`,
    [caller.programmeId, said.id, stickingId, said.donorTreeId, said.determinedOn, said.evidence],
  );
  return same !== undefined;
}

const FOLLOW = `
WITH RECURSIVE ${REACH}
UPDATE sticking k SET donor_tree_id = last.donor_tree_id, taxon_id = coalesce(d.taxon_id, k.taxon_id)
FROM family f
JOIN LATERAL (SELECT x.donor_tree_id FROM determination x WHERE x.programme_id = $1 AND x.sticking_id = f.id ORDER BY ${LAST_FIRST} LIMIT 1) last ON true
LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = last.donor_tree_id
WHERE k.programme_id = $1 AND k.id = f.id`;

/** On whose land the donor trees of the reached batches stand now: those partners may see them, and no others. */
const FOLLOW_PARTNERS = `
WITH RECURSIVE ${REACH}, origin AS (
  SELECT id AS batch_id, id AS origin_id FROM reached
  UNION SELECT o.batch_id, up.id FROM origin o
  JOIN batch b ON b.programme_id = $1 AND b.id = o.origin_id AND b.sticking_id IS NULL
  JOIN LATERAL (SELECT b.parent_id AS id UNION SELECT m.from_batch_id FROM mixed_part m WHERE m.programme_id = $1 AND m.batch_id = b.id) up ON up.id IS NOT NULL
), now AS (
  SELECT DISTINCT o.batch_id, st.partner_id FROM origin o
  JOIN batch b ON b.programme_id = $1 AND b.id = o.origin_id JOIN sticking k ON k.programme_id = $1 AND k.id = b.sticking_id
  LEFT JOIN sticking_candidate c ON c.programme_id = $1 AND c.sticking_id = k.id AND k.donor_tree_id IS NULL
  JOIN donor_tree d ON d.programme_id = $1 AND d.id = coalesce(k.donor_tree_id, c.donor_tree_id)
  JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id AND st.partner_id IS NOT NULL
), ended AS (
  DELETE FROM batch_partner p USING reached r WHERE p.programme_id = $1 AND p.batch_id = r.id AND p.relation = 'stand'
    AND NOT EXISTS (SELECT FROM now WHERE now.batch_id = p.batch_id AND now.partner_id = p.partner_id)
)
INSERT INTO batch_partner (programme_id, batch_id, partner_id, relation) SELECT $1, batch_id, partner_id, 'stand' FROM now ON CONFLICT DO NOTHING`;

/** What follows from determinations: the donor tree of each sticking that they reach, and which partners may see its batches. */
export async function followDeterminations(sql: UnitOfWork, programmeId: string, stickingId: string): Promise<void> {
  await sql.rows(FOLLOW, [programmeId, stickingId]);
  await sql.rows(FOLLOW_PARTNERS, [programmeId, stickingId]);
}
