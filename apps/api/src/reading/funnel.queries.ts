import { Injectable } from '@nestjs/common';
import type { FunnelGroup, FunnelQuery } from '@sprigline/contract';
import type { StageTally } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';
import { chosenStickings } from './chosen-stickings.queries.ts';

type GroupHead = Omit<FunnelGroup, 'key' | 'stages' | 'donors' | 'verdictOn'>;

/** In the order in which the query builds them. */
type TallyRow = [
  donorId: string | null, stage: StageTally['stage'], cameIn: number, goneOn: number, died: number, unaccounted: number, notRooted: number, thrownOut: number,
  givenOut: number, restuck: number, mixed: number, mixedIn: number, here: number, notFound: number,
];

/** Deaths are told by donor without their cause, and by cause without the donor: both would be many more rows. */
export interface GroupRow extends Record<string, unknown> {
  key: string;
  head: GroupHead;
  tallies: TallyRow[];
  causes: { stage: StageTally['stage']; cause: string; n: number }[];
  /** Of each species with cuttings that wait for their verdict: the last day on which such were stuck. */
  waiting: { taxonId: string; lastStuckOn: string }[];
}

@Injectable()
export class FunnelQueries {
  /**
   * Tallies of the chosen stickings, summed up by group, donor (clone group) and stage.
   *
   * Built as JSON by PostgreSQL, group by group: one row a group leaves the database, whatever
   * the number of stickings.
   */
  async tallies(sql: UnitOfWork, programmeId: string, { after, limit, ...query }: FunnelQuery): Promise<Part<GroupRow>> {
    const chosen = chosenStickings(programmeId, query);
    const values = [...chosen.values];
    const place = (value: unknown): string => `$${values.push(value)}`;
    const [isUnknown, name, taxon, key] = keysAfter(after, 4) ?? [];
    const rows = await sql.rows<GroupRow>(
      `WITH chosen AS (${chosen.text}),
       heads AS (
         SELECT key, min(name) AS name, min(stuck_on) AS first_on, max(stuck_on) AS last_on,
                CASE WHEN count(DISTINCT stand_id) = 1 THEN min(stand_id::text) END AS stand_id,
                CASE WHEN count(DISTINCT taxon_id) = 1 THEN min(taxon_id::text) END AS taxon_id
         FROM chosen c WHERE EXISTS (SELECT FROM tally t WHERE t.programme_id = $1 AND t.sticking_id = c.sticking_id) GROUP BY key),
       part AS (
         SELECT h.*, coalesce(x.scientific_name, '') AS taxon, x.scientific_name, x.common_name
         FROM heads h LEFT JOIN taxon x ON x.programme_id = $1 AND x.id = h.taxon_id::uuid
         ${isUnknown === undefined ? '' : `WHERE (h.key = '', h.name, coalesce(x.scientific_name, ''), h.key) > (${place(isUnknown === 'true')}::boolean, ${place(name)}, ${place(taxon)}, ${place(key)})`}
         ORDER BY h.key = '', h.name, coalesce(x.scientific_name, ''), h.key${Number.isFinite(limit) ? ` LIMIT ${place(limit + 1)}` : ''}),
       read AS (
         SELECT c.key, c.donor, c.taxon_id, c.stuck_on, t.* FROM part p JOIN chosen c ON c.key = p.key
         JOIN tally t ON t.programme_id = $1 AND t.sticking_id = c.sticking_id),
       sums AS (
         SELECT key, donor, stage, sum(came_in) AS came_in, sum(gone_on) AS gone_on, sum(died) AS died,
                sum(unaccounted) AS unaccounted, sum(not_rooted) AS not_rooted, sum(thrown_out) AS thrown_out,
                sum(given_out) AS given_out, sum(restuck) AS restuck, sum(mixed) AS mixed, sum(mixed_in) AS mixed_in,
                sum(here) AS here, sum(not_found) AS not_found
         FROM read GROUP BY key, donor, stage),
       tallies AS (
         -- Arrays, since objects would repeat their names once a donor and stage.
         SELECT key, json_agg(json_build_array(donor, stage, came_in, gone_on, died, unaccounted, not_rooted, thrown_out, given_out, restuck, mixed,
                                               mixed_in, here, not_found)) AS tallies
         FROM sums GROUP BY key),
       causes AS (
         SELECT key, jsonb_agg(jsonb_build_object('stage', stage, 'cause', cause, 'n', n)) AS causes FROM (
           SELECT dead.key, dead.stage, of.key AS cause, sum(of.value::int) AS n
           FROM (SELECT key, stage, died_of FROM read WHERE died > 0) dead CROSS JOIN LATERAL jsonb_each_text(died_of) of
           GROUP BY 1, 2, 3) by_cause
         GROUP BY key),
       waiting AS (
         SELECT key, json_agg(json_build_object('taxonId', taxon_id, 'lastStuckOn', last_on)) AS waiting FROM (
           SELECT key, taxon_id, max(stuck_on) AS last_on FROM read WHERE stage = 'cutting' AND here > 0 AND stuck_on IS NOT NULL GROUP BY 1, 2) by_taxon
         GROUP BY key)
       SELECT h.key, tallies.tallies, coalesce(causes.causes, '[]') AS causes, coalesce(waiting.waiting, '[]') AS waiting, jsonb_build_object(
         'name', h.name, 'standId', h.stand_id, 'taxonId', h.taxon_id, 'taxon', h.scientific_name, 'commonName', h.common_name,
         'firstStuckOn', h.first_on, 'lastStuckOn', h.last_on) AS head
       FROM part h
       JOIN tallies ON tallies.key = h.key
       LEFT JOIN causes ON causes.key = h.key
       LEFT JOIN waiting ON waiting.key = h.key
       ORDER BY h.key = '', h.name, h.taxon, h.key`,
      values,
    );
    return partOf(rows, limit, ({ key: last, head }) => [String(last === ''), head.name, head.taxon ?? '', last]);
  }
}
