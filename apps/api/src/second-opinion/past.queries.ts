import { Injectable } from '@nestjs/common';
import type { PastSticking } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';

/** The newest tell most of what is done today; so the cost does not grow with the years. */
const NEWEST = 500;

type PastRow = { readonly [K in keyof PastSticking]-?: PastSticking[K] | null } & { readonly taxonId: string } & Record<string, unknown>;

@Injectable()
export class PastQueries {
  /** The newest stickings of each species whose end is known of at least half of their cuttings, with what was done to them. */
  async ofTaxa(sql: UnitOfWork, programmeId: string, taxonIds: readonly string[]): Promise<ReadonlyMap<string, PastSticking[]>> {
    const rows = await sql.rows<PastRow>(
      `SELECT x.id AS "taxonId", p.* FROM unnest($2::uuid[]) x (id) CROSS JOIN LATERAL (
         SELECT coalesce(d.clone_group_id, d.id) AS "donorId", t.gone_on AS "goneOn", ended.n AS settled, u.length_cm AS "lengthCm",
                coalesce(b.medium, v.medium) AS medium, v.hormone_ppm AS "hormonePpm", d.estimated_age_years AS "ageYears"
         FROM sticking s
         JOIN donor_tree d ON d.programme_id = $1 AND d.id = s.donor_tree_id
         JOIN tally t ON t.programme_id = $1 AND t.sticking_id = s.id AND t.stage = 'cutting'
         CROSS JOIN LATERAL (SELECT t.gone_on + t.died + t.unaccounted + t.not_rooted + t.thrown_out AS n) ended
         LEFT JOIN bundle u ON u.programme_id = $1 AND u.id = s.bundle_id
         LEFT JOIN recipe_version v ON v.programme_id = $1 AND v.id = s.recipe_version_id
         LEFT JOIN LATERAL (SELECT medium FROM batch WHERE programme_id = $1 AND opening_entry_id = s.opening_entry_id AND sticking_id = s.id LIMIT 1) b ON true
         WHERE s.programme_id = $1 AND s.taxon_id = x.id AND ended.n > 0 AND ended.n >= t.here
         ORDER BY s.stuck_on DESC NULLS LAST, s.id LIMIT ${NEWEST}) p`,
      [programmeId, taxonIds],
    );
    const past = new Map<string, PastSticking[]>(taxonIds.map((id) => [id, []]));
    for (const { taxonId, lengthCm, medium, hormonePpm, ageYears, donorId, goneOn, settled } of rows) {
      past.get(taxonId)?.push({ donorId: donorId ?? '', goneOn: goneOn ?? 0, settled: settled ?? 0, lengthCm: lengthCm ?? undefined, medium: medium ?? undefined, hormonePpm: hormonePpm ?? undefined, ageYears: ageYears ?? undefined });
    }
    return past;
  }
}
