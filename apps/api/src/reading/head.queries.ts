import { Injectable } from '@nestjs/common';
import type { ReadingChoices } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { SEASONS } from './chosen-stickings.queries.ts';

export interface NamedDonor extends Record<string, unknown> {
  readonly donorId: string;
  readonly treeId: string;
  readonly label: string;
}

export type NamedDonors = ReadonlyMap<string, NamedDonor>;

/** What stands around the numbers of every reading. */
@Injectable()
export class HeadQueries {
  async head(sql: UnitOfWork, programmeId: string): Promise<{ asOf: string; rootedMeans: string }> {
    return sql.one(
      `SELECT present_day(zone) AS "asOf", rooted_means AS "rootedMeans" FROM programme WHERE id = $1`,
      [programmeId],
    );
  }

  /** The same, with the site that it is about; nothing where there is no such site. */
  async headAtSite(sql: UnitOfWork, programmeId: string, siteId: string): Promise<{ asOf: string; rootedMeans: string; site: { id: string; name: string } | null }> {
    return sql.one(
      `SELECT present_day(p.zone) AS "asOf", p.rooted_means AS "rootedMeans", CASE WHEN s.place_id IS NOT NULL THEN json_build_object('id', pl.id, 'name', pl.name) END AS site
       FROM programme p
       LEFT JOIN site s ON s.programme_id = p.id AND s.place_id = $2
       LEFT JOIN place pl ON pl.programme_id = p.id AND pl.id = s.place_id WHERE p.id = $1`,
      [programmeId, siteId],
    );
  }

  /** Labels of donor trees, by the id that stands for their clone group in a reading. */
  async donors(sql: UnitOfWork, programmeId: string, donorIds: readonly string[]): Promise<NamedDonors> {
    if (donorIds.length === 0) return new Map();
    const rows = await sql.rows<NamedDonor>(
      `SELECT coalesce(clone_group_id, id) AS "donorId", (array_agg(id ORDER BY label))[1] AS "treeId", string_agg(label, ' = ' ORDER BY label) AS label
       FROM donor_tree WHERE programme_id = $1 AND (clone_group_id = ANY ($2::uuid[]) OR clone_group_id IS NULL AND id = ANY ($2::uuid[])) GROUP BY 1`,
      [programmeId, donorIds],
    );
    return new Map(rows.map((row) => [row.donorId, row]));
  }

  async choices(sql: UnitOfWork, programmeId: string): Promise<ReadingChoices> {
    return sql.one<ReadingChoices>(
      `WITH RECURSIVE held AS (
         SELECT id, name::text AS name, ARRAY[walk_order] AS way FROM place
         WHERE programme_id = $1 AND parent_id IS NULL AND kind <> 'tray'
         UNION ALL
         SELECT c.id, held.name || ' › ' || c.name, held.way || c.walk_order FROM place c
         JOIN held ON c.programme_id = $1 AND c.parent_id = held.id AND c.kind <> 'tray')
       SELECT
         (SELECT coalesce(jsonb_agg(jsonb_build_object('id', id, 'name', name) ORDER BY name), '[]') FROM stand WHERE programme_id = $1) AS stands,
         (SELECT coalesce(jsonb_agg(jsonb_build_object('id', id, 'name', coalesce(common_name, scientific_name)) ORDER BY scientific_name), '[]')
            FROM taxon WHERE programme_id = $1) AS taxa,
         (SELECT coalesce(jsonb_agg(jsonb_build_object('id', id, 'name', name) ORDER BY name), '[]') FROM recipe WHERE programme_id = $1) AS recipes,
         (SELECT coalesce(jsonb_agg(jsonb_build_object('id', id, 'name', name) ORDER BY way, name), '[]') FROM held) AS places,
         (SELECT coalesce(jsonb_agg(jsonb_build_object('year', year, 'name', name) ORDER BY year DESC), '[]') FROM (${SEASONS}) seasons) AS seasons`,
      [programmeId],
    );
  }
}
