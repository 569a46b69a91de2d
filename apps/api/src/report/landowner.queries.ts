import { Injectable } from '@nestjs/common';
import type { LandownerQuery, LandownerReport, LandownerTree } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';

export interface LandownerRows extends Record<string, unknown> {
  readonly name: string;
  readonly trees: LandownerTree[];
  readonly owed: number;
  /** Null where they are no partner of the programme, and no request is for what is owed to them. */
  readonly givenBack: number | null;
}
type Kind = LandownerReport['subject']['kind'];

/** $2 is what is asked about, $3 the day. */
const TREES: Readonly<Record<Kind, string>> = {
  stand: `SELECT id FROM donor_tree WHERE programme_id = $1 AND stand_id = $2`,
  partner: `SELECT d.id FROM stand s JOIN donor_tree d ON d.programme_id = $1 AND d.stand_id = s.id WHERE s.programme_id = $1 AND s.partner_id = $2`,
  permission: `SELECT DISTINCT u.donor_tree_id AS id FROM trip t JOIN bundle u ON u.programme_id = $1 AND u.trip_id = t.id WHERE t.programme_id = $1 AND t.permission_id = $2`,
};
const STICKINGS: Readonly<Record<Kind, string>> = {
  stand: `SELECT s.id FROM trees JOIN sticking s ON s.programme_id = $1 AND s.donor_tree_id = trees.id`,
  partner: `SELECT s.id FROM trees JOIN sticking s ON s.programme_id = $1 AND s.donor_tree_id = trees.id`,
  permission: `SELECT s.id FROM trip t JOIN bundle u ON u.programme_id = $1 AND u.trip_id = t.id JOIN sticking s ON s.programme_id = $1 AND s.bundle_id = u.id
    WHERE t.programme_id = $1 AND t.permission_id = $2`,
};
const NAMES: Readonly<Record<Kind, string>> = {
  stand: 'SELECT name::text, partner_id FROM stand WHERE programme_id = $1 AND id = $2',
  partner: 'SELECT name::text, id AS partner_id FROM partner WHERE programme_id = $1 AND id = $2',
  permission: 'SELECT p.land::text AS name, s.partner_id FROM permission p LEFT JOIN stand s ON s.programme_id = $1 AND s.id = p.stand_id WHERE p.programme_id = $1 AND p.id = $2',
};
const OWED: Readonly<Record<Kind, string>> = {
  stand: 'SELECT id, plants_owed_back FROM permission WHERE programme_id = $1 AND stand_id = $2 AND valid_from <= $3',
  partner: `SELECT p.id, p.plants_owed_back FROM permission p JOIN stand s ON s.programme_id = $1 AND s.id = p.stand_id WHERE p.programme_id = $1 AND s.partner_id = $2 AND p.valid_from <= $3`,
  permission: 'SELECT id, plants_owed_back FROM permission WHERE programme_id = $1 AND id = $2 AND valid_from <= $3',
};

const sum = (which: string): string => `coalesce(sum(n) FILTER (WHERE ${which}), 0)::int`;
const IN = `('stuck', 'received', 'wentIn', 'splitIn', 'restuckIn', 'mixedIn', 'identifiedIn', 'givenIn', 'found', 'takenBack')`;
/** What movements come to, with what is alive as what came less what left. */
const CAME = `
  ${sum(`effect = 'stuck'`)} AS stuck, ${sum(`effect = 'received'`)} AS received, ${sum(`effect = 'found'`)} AS found,
  ${sum(`effect = 'wentOn' AND stage = 'cutting'`)} AS rooted, ${sum(`effect = 'wentOn' AND to_stage = 'potted'`)} AS potted, ${sum(`effect = 'wentOn' AND to_stage = 'planted'`)} AS planted,
  ${sum(`effect IN ('died', 'unaccounted', 'notRooted', 'thrownOut')`)} - ${sum(`effect = 'takenBack'`)} AS lost, ${sum(`effect = 'givenOut'`)} AS "givenOut",
  ${sum(`effect IN ('mixedOut', 'identifiedOut')`)} - ${sum(`effect IN ('mixedIn', 'identifiedIn')`)} AS "mixedAway", ${sum(`effect IN ${IN}`)} - ${sum(`effect NOT IN ${IN}`)} AS alive`;

const landownerSql = (kind: Kind): string => `
WITH RECURSIVE trees AS (${TREES[kind]}),
  mine AS (
    ${STICKINGS[kind]}
    UNION
    -- Stuck a second time, or cut again from their own nursery plants.
    SELECT s.id FROM mine, LATERAL (
      SELECT id FROM sticking WHERE programme_id = $1 AND second_try_of_id = mine.id
      UNION ALL SELECT s.id FROM batch b JOIN sticking s ON s.programme_id = $1 AND s.from_batch_id = b.id WHERE b.programme_id = $1 AND b.sticking_id = mine.id) s),
  moved AS MATERIALIZED (
    SELECT s.donor_tree_id, s.bundle_id IS NULL AND s.from_batch_id IS NULL AND s.second_try_of_id IS NULL AS has_no_bundle, b.id AS batch_id, b.stage, m.effect, m.n, m.to_stage FROM mine JOIN sticking s ON s.programme_id = $1 AND s.id = mine.id
    JOIN batch b ON b.programme_id = $1 AND b.sticking_id = s.id JOIN movement m ON m.programme_id = $1 AND m.batch_id = b.id AND m.day <= $3
    WHERE s.donor_tree_id IS NOT NULL),
  -- An older log sheet begins at the sticking: what was stuck without a bundle was taken as well.
  came AS (SELECT donor_tree_id, ${sum(`effect = 'stuck' AND has_no_bundle`)} AS "takenUntold", ${CAME} FROM moved GROUP BY donor_tree_id),
  alive_at AS (
    SELECT donor_tree_id, json_object_agg(stage, alive) AS by_stage FROM (
      SELECT donor_tree_id, stage, ${sum(`effect IN ${IN}`)} - ${sum(`effect NOT IN ${IN}`)} AS alive FROM moved GROUP BY donor_tree_id, stage) x GROUP BY donor_tree_id),
  stood AS (
    SELECT x.*, (SELECT y.place_id FROM stay y WHERE y.programme_id = $1 AND y.batch_id = x.batch_id AND y.from_day <= $3 ORDER BY y.seq DESC LIMIT 1) AS place_id FROM (
      SELECT donor_tree_id, batch_id, ${sum(`effect IN ('wentIn', 'received')`)} AS planted, ${sum(`effect IN ${IN}`)} - ${sum(`effect NOT IN ${IN}`)} AS alive
      FROM moved WHERE stage = 'planted' GROUP BY donor_tree_id, batch_id) x),
  at_site AS (
    SELECT donor_tree_id, coalesce(up.name, p.name)::text AS name, sum(planted)::int AS planted, sum(alive)::int AS alive
    FROM stood JOIN place p ON p.programme_id = $1 AND p.id = stood.place_id LEFT JOIN place up ON up.programme_id = $1 AND up.id = p.parent_id AND up.kind = 'site'
    GROUP BY 1, 2),
  took AS (
    SELECT u.donor_tree_id, sum(u.cuttings)::int AS taken FROM trees JOIN bundle u ON u.programme_id = $1 AND u.donor_tree_id = trees.id
    JOIN trip t ON t.programme_id = $1 AND t.id = u.trip_id AND t.went_on <= $3 ${kind === 'permission' ? 'AND t.permission_id = $2' : ''} GROUP BY 1),
  owed AS (${OWED[kind]}),
  -- What was despatched for these permissions; a partner has been given the rest without a request.
  gone_back AS (
    SELECT d.entry_id, m.n FROM request q JOIN despatch d ON d.programme_id = $1 AND d.request_id = q.id
    JOIN movement m ON m.programme_id = $1 AND m.entry_id = d.entry_id AND m.batch_id = d.batch_id AND m.effect IN ('wentOn', 'givenOut', 'givenAcross') AND m.day <= $3
    WHERE q.programme_id = $1 AND q.permission_id IN (SELECT id FROM owed))
SELECT about.name,
  (SELECT coalesce(json_agg(x ORDER BY x.stand, x.label), '[]') FROM (
    SELECT d.id, d.label, st.name AS stand, t.scientific_name AS taxon, coalesce(took.taken, 0) + coalesce(came."takenUntold", 0) AS taken, coalesce(came.stuck, 0) AS stuck, coalesce(came.received, 0) AS received,
      coalesce(came.found, 0) AS found, coalesce(came.rooted, 0) AS rooted, coalesce(came.potted, 0) AS potted, coalesce(came.planted, 0) AS planted, coalesce(came.lost, 0) AS lost,
      coalesce(came."givenOut", 0) AS "givenOut", coalesce(came."mixedAway", 0) AS "mixedAway", coalesce(came.alive, 0) AS alive,
      jsonb_build_object('cutting', 0, 'liner', 0, 'potted', 0, 'planted', 0) || coalesce(alive_at.by_stage::jsonb, '{}') AS "aliveBy",
      (SELECT coalesce(json_agg(json_build_object('name', name, 'planted', planted, 'alive', alive) ORDER BY name), '[]') FROM at_site WHERE donor_tree_id = d.id) AS sites
    FROM donor_tree d JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id JOIN taxon t ON t.programme_id = $1 AND t.id = d.taxon_id
    LEFT JOIN came ON came.donor_tree_id = d.id LEFT JOIN took ON took.donor_tree_id = d.id LEFT JOIN alive_at ON alive_at.donor_tree_id = d.id
    WHERE d.programme_id = $1 AND d.id IN (SELECT id FROM trees) AND (took.taken > 0 OR came.donor_tree_id IS NOT NULL)) x) AS trees,
  (SELECT coalesce(sum(plants_owed_back), 0)::int FROM owed) AS owed,
  CASE WHEN about.partner_id IS NOT NULL OR EXISTS (SELECT FROM request WHERE programme_id = $1 AND permission_id IN (SELECT id FROM owed)) THEN (SELECT coalesce(sum(n), 0)::int FROM gone_back)
    + (SELECT coalesce(sum(m.n), 0)::int FROM batch_partner h JOIN movement m ON m.programme_id = $1 AND m.batch_id = h.batch_id AND m.effect = 'givenIn' AND m.day <= $3
      WHERE h.programme_id = $1 AND h.partner_id = about.partner_id AND h.relation = 'hands' AND m.entry_id NOT IN (SELECT entry_id FROM gone_back)) END AS "givenBack"
FROM (${NAMES[kind]}) about`;

@Injectable()
export class LandownerQueries {
  /** @throws DomainError `record/unknown` */
  async report(sql: UnitOfWork, programmeId: string, { kind, id }: { kind: Kind; id: string }, asOf: string): Promise<LandownerRows> {
    const rows = await sql.maybe<LandownerRows>(landownerSql(kind), [programmeId, id, asOf]);
    if (!rows) throw new DomainError('record/unknown', 'there is nothing here to report on', { [kind]: id });
    return rows;
  }
}

export function subjectOf({ standId, partnerId, permissionId }: LandownerQuery): { kind: Kind; id: string } {
  if (standId !== undefined) return { kind: 'stand', id: standId };
  return partnerId !== undefined ? { kind: 'partner', id: partnerId } : { kind: 'permission', id: permissionId ?? '' };
}
