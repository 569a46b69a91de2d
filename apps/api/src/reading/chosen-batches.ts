import type { ReadingFilter } from '@sprigline/contract';
import { type Chosen, chosenStickings } from './chosen-stickings.queries.ts';
import { MIXED_ORIGIN, THE_BATCH } from './unsure-plants.ts';

/**
 * The batches that a reading is of: CTEs the last of which, `batches`, answers `id, stage, donor,
 * stand_id, taxon_id`. The programme is `$1`. Needs `WITH RECURSIVE`.
 *
 * A mixed batch belongs to it when all that went into it does; its donor is not known, its stand
 * and species are where they are the same for all.
 */
export function chosenBatches(programmeId: string, filter: ReadingFilter): Chosen {
  const { text, values } = chosenStickings(programmeId, { ...filter, by: 'all' });
  return {
    values,
    text: `chosen AS MATERIALIZED (${text}),
      ${MIXED_ORIGIN},
      -- Before it meets the chosen ones: else they are all looked through for each that went in.
      held AS MATERIALIZED (
        SELECT o.id, f.sticking_id FROM origin o CROSS JOIN LATERAL (${THE_BATCH('o.from_id')}) f WHERE f.sticking_id IS NOT NULL),
      batches AS MATERIALIZED (
        SELECT b.id, b.stage, c.donor, c.stand_id, c.taxon_id FROM chosen c JOIN batch b ON b.programme_id = $1 AND b.sticking_id = c.sticking_id
        UNION ALL
        SELECT b.id, b.stage, NULL, whole.stand_id, whole.taxon_id FROM (
          SELECT h.id, CASE WHEN count(DISTINCT c.stand_id) = 1 AND bool_and(c.stand_id IS NOT NULL) THEN min(c.stand_id::text)::uuid END AS stand_id,
                 CASE WHEN count(DISTINCT c.taxon_id) = 1 THEN min(c.taxon_id::text)::uuid END AS taxon_id
          FROM held h LEFT JOIN chosen c ON c.sticking_id = h.sticking_id
          GROUP BY h.id HAVING bool_and(c.sticking_id IS NOT NULL)) whole
        CROSS JOIN LATERAL (${THE_BATCH('whole.id')}) b)`,
  };
}
