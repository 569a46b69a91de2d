import { Injectable } from '@nestjs/common';
import type { ReadingFilter } from '@sprigline/contract';
import { EFFECTS_IN, type Stage } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { standingEntries, type Standing } from '../entry/standing.queries.ts';
import { chosenBatches } from './chosen-batches.ts';

/** Books of the batches that stand at a site, by donor; those of an unknown donor by stand and species. */
export interface SiteRow extends Record<string, unknown> {
  siteId: string;
  donorId: string | null;
  /** Of donor trees that are one clone, the first by label, and all their labels. */
  treeId: string | null;
  label: string | null;
  standId: string | null;
  stand: string | null;
  taxonId: string | null;
  taxon: string;
  commonName: string | null;
  came: number;
  died: number;
  unaccounted: number;
  thrownOut: number;
  givenOut: number;
  mixed: number;
  mixedIn: number;
  here: number;
  notFound: number;
  /** Nothing for those that are planted: none goes on from there. */
  stage: Extract<Stage, 'planted'>;
}

/** What is split or given within the programme and stays at the site cancels out. */
const CAME = EFFECTS_IN.filter((effect) => !['mixedIn', 'identifiedIn', 'takenBack'].includes(effect)).map((effect) => `'${effect}'`).join(', ');

/** So many checks are told; older ones are left out. */
const MOST_CHECKS = 2000;

const SITES = `
  sites AS (
    SELECT p.id AS site_id, p.id AS place_id FROM place p JOIN site s ON s.programme_id = $1 AND s.place_id = p.id WHERE p.programme_id = $1
    UNION SELECT s.site_id, c.id FROM sites s JOIN place c ON c.programme_id = $1 AND c.parent_id = s.place_id)`;

@Injectable()
export class SiteReadingQueries {
  /** @param siteId nothing: all sites, a row each */
  async books(sql: UnitOfWork, programmeId: string, filter: ReadingFilter, siteId?: string): Promise<SiteRow[]> {
    const { text, values } = chosenBatches(programmeId, filter);
    const only = `$${values.length + 1}::uuid`;
    return sql.rows<SiteRow>(
      `WITH RECURSIVE ${text}, ${SITES},
       standing AS (
         SELECT s.site_id, b.*, x.balance, x.not_found FROM batches b
         JOIN batch_state x ON x.programme_id = $1 AND x.batch_id = b.id
         JOIN sites s ON s.place_id = x.place_id
         WHERE b.stage = 'planted' AND (${only} IS NULL OR s.site_id = ${only})),
       moved AS (
         SELECT b.id, sum(m.n) FILTER (WHERE m.effect IN (${CAME})) AS came, sum(m.n) FILTER (WHERE m.effect IN ('splitOut', 'givenAcross')) AS split,
                sum(m.n) FILTER (WHERE m.effect = 'died') AS died, sum(CASE m.effect WHEN 'unaccounted' THEN m.n WHEN 'takenBack' THEN -m.n END) AS unaccounted,
                sum(m.n) FILTER (WHERE m.effect = 'thrownOut') AS thrown_out, sum(m.n) FILTER (WHERE m.effect = 'givenOut') AS given_out,
                sum(m.n) FILTER (WHERE m.effect IN ('mixedOut', 'identifiedOut')) AS mixed, sum(m.n) FILTER (WHERE m.effect IN ('mixedIn', 'identifiedIn')) AS mixed_in
         FROM standing b JOIN movement m ON m.programme_id = $1 AND m.batch_id = b.id GROUP BY b.id),
       trees AS (
         SELECT coalesce(clone_group_id, id) AS donor, (array_agg(id ORDER BY label))[1] AS tree_id, string_agg(label, ' = ' ORDER BY label) AS label
         FROM donor_tree WHERE programme_id = $1 AND coalesce(clone_group_id, id) IN (SELECT donor FROM standing) GROUP BY 1)
       SELECT b.site_id AS "siteId", b.donor AS "donorId", trees.tree_id AS "treeId", trees.label, b.stand_id AS "standId", st.name AS stand, b.taxon_id AS "taxonId",
              coalesce(t.scientific_name, '') AS taxon, t.common_name AS "commonName", 'planted' AS stage,
              sum(coalesce(came, 0) - coalesce(split, 0))::int AS came, coalesce(sum(died), 0)::int AS died, coalesce(sum(unaccounted), 0)::int AS unaccounted,
              coalesce(sum(thrown_out), 0)::int AS "thrownOut", coalesce(sum(given_out), 0)::int AS "givenOut", coalesce(sum(mixed), 0)::int AS mixed,
              coalesce(sum(mixed_in), 0)::int AS "mixedIn", sum(b.balance)::int AS here, sum(b.not_found)::int AS "notFound"
       FROM standing b
       LEFT JOIN moved m ON m.id = b.id
       LEFT JOIN trees ON trees.donor = b.donor
       LEFT JOIN stand st ON st.programme_id = $1 AND st.id = b.stand_id
       LEFT JOIN taxon t ON t.programme_id = $1 AND t.id = b.taxon_id
       GROUP BY b.site_id, b.donor, trees.tree_id, trees.label, b.stand_id, st.name, b.taxon_id, t.scientific_name, t.common_name
       ORDER BY b.site_id, st.name NULLS LAST, taxon, b.donor`,
      [...values, siteId ?? null],
    );
  }

  /** All sites in walking order, with the last day on which a tree there was checked. */
  async sites(sql: UnitOfWork, programmeId: string): Promise<{ siteId: string; name: string; lastCheckedOn: string | null }[]> {
    return sql.rows(
      `WITH RECURSIVE ${SITES},
       checked AS (
         SELECT s.site_id, e.observed_on FROM sites s JOIN entry e ON e.programme_id = $1 AND e.kind = 'checked' AND e.place_id = s.place_id
         UNION ALL
         SELECT s.site_id, e.observed_on FROM sites s
         JOIN stay y ON y.programme_id = $1 AND y.place_id = s.place_id
         JOIN entry_touch t ON t.programme_id = $1 AND t.batch_id = y.batch_id
         JOIN entry e ON e.programme_id = $1 AND e.id = t.entry_id AND e.kind = 'checked')
       SELECT p.id AS "siteId", p.name, (SELECT max(observed_on) FROM checked c WHERE c.site_id = p.id) AS "lastCheckedOn"
       FROM site s JOIN place p ON p.programme_id = $1 AND p.id = s.place_id WHERE s.programme_id = $1 ORDER BY p.walk_order, p.name`,
      [programmeId],
    );
  }

  /** Checks at a site that stand, of the chosen batches or of a plot as a whole, the latest ones. */
  async checks(sql: UnitOfWork, programmeId: string, filter: ReadingFilter, siteId: string): Promise<readonly Standing[]> {
    const { text, values } = chosenBatches(programmeId, filter);
    const site = `$${values.length + 1}::uuid`;
    const isNarrowed = Object.values(filter).some((value) => value !== undefined);
    return standingEntries(
      sql, programmeId,
      `WITH RECURSIVE ${text}, ${SITES}
       SELECT id FROM (
         SELECT e.id, e.observed_on FROM sites s
         JOIN batch_state x ON x.programme_id = $1 AND x.place_id = s.place_id
         JOIN batches b ON b.id = x.batch_id
         JOIN entry_touch t ON t.programme_id = $1 AND t.batch_id = b.id
         JOIN entry e ON e.programme_id = $1 AND e.id = t.entry_id AND e.kind = 'checked'
         WHERE s.site_id = ${site}
         UNION
         SELECT e.id, e.observed_on FROM sites s JOIN entry e ON e.programme_id = $1 AND e.kind = 'checked' AND e.place_id = s.place_id
         WHERE s.site_id = ${site} AND NOT ${String(isNarrowed)}) e
       ORDER BY observed_on DESC, id LIMIT ${MOST_CHECKS}`,
      [...values.slice(1), siteId],
    );
  }

  /** In which plot, or other place, each of the batches or places named is. */
  async plots(sql: UnitOfWork, programmeId: string, ids: readonly string[]): Promise<ReadonlyMap<string, { id: string; name: string }>> {
    const rows = await sql.rows<{ of: string; id: string; name: string }>(
      `SELECT x.batch_id AS of, p.id, p.name FROM batch_state x JOIN place p ON p.programme_id = $1 AND p.id = x.place_id WHERE x.programme_id = $1 AND x.batch_id = ANY ($2::uuid[])
       UNION ALL SELECT id, id, name FROM place WHERE programme_id = $1 AND id = ANY ($2::uuid[])`,
      [programmeId, ids],
    );
    return new Map(rows.map(({ of, ...plot }) => [of, plot]));
  }
}
