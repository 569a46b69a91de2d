import { Injectable } from '@nestjs/common';
import type { TaxonDays } from '@sprigline/contract';
import { STICKINGS_NEEDED, waitingDays } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';

/** Older ones tell of other recipes and other hands. */
const LAST_CLOSED = 50;

interface DaysRow extends Record<string, unknown> {
  readonly taxonId: string;
  readonly firstCheck: number | null;
  readonly verdict: number | null;
  readonly movingOn: number | null;
  readonly firstRooted: number[];
  readonly firstGoneOn: number[];
  readonly lastGoneOn: number[];
}

/** What a count says now, if it was corrected: the last replacement. `e` is the entry of a touch `t`. */
export const AS_CORRECTED = `
  LEFT JOIN LATERAL (
    SELECT kind, body FROM entry WHERE programme_id = $1 AND corrects_id = e.id AND NOT author_unverified ORDER BY received_at DESC, id DESC LIMIT 1) c ON true
  CROSS JOIN LATERAL coalesce(c.body #> '{instead,saying}', e.body) AS said
  CROSS JOIN LATERAL coalesce((c.body #>> '{instead,observedOn}')::date, e.observed_on) AS on_day`;

/** The last stickings of a species `x` that closed and gave a rooted plant. */
const CLOSED = `
    SELECT s.id, s.stuck_on FROM sticking s JOIN tally y ON y.programme_id = $1 AND y.sticking_id = s.id AND y.stage = 'cutting'
    WHERE s.programme_id = $1 AND s.taxon_id = x.id AND s.stuck_on IS NOT NULL AND y.here = 0 AND y.gone_on > 0
    ORDER BY s.stuck_on DESC, s.id LIMIT ${LAST_CLOSED}`;

/** On which days plants of such a sticking `k` went on, first and last. */
const GONE = `
    SELECT min(m.day) AS first_day, max(m.day) AS last_day FROM batch b JOIN movement m ON m.programme_id = $1 AND m.batch_id = b.id AND m.effect = 'wentOn'
    WHERE b.programme_id = $1 AND b.sticking_id = k.id AND b.stage = 'cutting'`;

/**
 * One row a species. A sticking is closed once no cutting of it is left; only the last ones that gave a rooted
 * plant are read, so the cost does not grow with the years.
 */
const DAYS = `
SELECT x.id AS "taxonId", x.first_check_days AS "firstCheck", x.verdict_days AS verdict, x.moving_on_days AS "movingOn",
  coalesce(h.first_rooted, '[]') AS "firstRooted", coalesce(h.first_gone_on, '[]') AS "firstGoneOn", coalesce(h.last_gone_on, '[]') AS "lastGoneOn"
FROM taxon x
LEFT JOIN LATERAL (
  SELECT jsonb_agg(least(rooted.day, gone.first_day) - k.stuck_on) AS first_rooted,
    jsonb_agg(gone.first_day - k.stuck_on) AS first_gone_on, jsonb_agg(gone.last_day - k.stuck_on) AS last_gone_on
  FROM (${CLOSED}) k
  CROSS JOIN LATERAL (${GONE}) gone
  CROSS JOIN LATERAL (
    SELECT min(on_day) AS day FROM batch b JOIN entry_touch t ON t.programme_id = $1 AND t.batch_id = b.id
    JOIN entry e ON e.programme_id = $1 AND e.id = t.entry_id AND e.kind = 'counted' AND NOT e.author_unverified ${AS_CORRECTED}
    WHERE b.programme_id = $1 AND b.sticking_id = k.id AND b.stage = 'cutting' AND c.kind IS DISTINCT FROM 'withdrawn'
      AND said ->> 'batchId' = b.id::text AND (said ->> 'rooted')::int > 0 AND on_day >= k.stuck_on) rooted
  WHERE gone.first_day >= k.stuck_on
) h ON true
WHERE x.programme_id = $1 ORDER BY x.scientific_name, x.id`;

/** Of some species the verdict alone, which needs no entries: a dashboard of one stand has no time to read them. */
const VERDICTS = `
SELECT x.id AS "taxonId", x.verdict_days AS verdict, (
    SELECT coalesce(jsonb_agg(gone.last_day - k.stuck_on), '[]') FROM (${CLOSED}) k CROSS JOIN LATERAL (${GONE}) gone
    WHERE x.verdict_days IS NULL AND gone.first_day >= k.stuck_on) AS "lastGoneOn"
FROM taxon x WHERE x.programme_id = $1 AND x.id = ANY ($2::uuid[])`;

/** When cuttings of each species are looked at, moved on and called. */
@Injectable()
export class DueDaysQueries {
  async ofTaxa(sql: UnitOfWork, programmeId: string): Promise<TaxonDays[]> {
    const rows = await sql.rows<DaysRow>(DAYS, [programmeId]);
    return rows.map(daysOfRow);
  }

  /** The same, with the earliest day on which roots were seen among the closed stickings that tell; missing below five. */
  async withFirstRoots(sql: UnitOfWork, programmeId: string): Promise<(TaxonDays & { readonly firstRoots?: number })[]> {
    const rows = await sql.rows<DaysRow>(DAYS, [programmeId]);
    return rows.map((row) => ({ ...daysOfRow(row), ...(row.firstRooted.length >= STICKINGS_NEEDED && { firstRoots: Math.min(...row.firstRooted) }) }));
  }

  /** Days until cuttings of these species are called, the same as `ofTaxa` tells. */
  async verdicts(sql: UnitOfWork, programmeId: string, taxonIds: readonly string[]): Promise<ReadonlyMap<string, number>> {
    if (taxonIds.length === 0) return new Map();
    const rows = await sql.rows<Pick<DaysRow, 'taxonId' | 'verdict' | 'lastGoneOn'>>(VERDICTS, [programmeId, taxonIds]);
    return new Map(rows.map(({ taxonId, verdict, lastGoneOn }) => {
      const days = waitingDays({ firstCheck: undefined, verdict: verdict ?? undefined, movingOn: undefined }, { firstRooted: [], firstGoneOn: [], lastGoneOn });
      return [taxonId, days.verdict.days];
    }));
  }
}

const daysOfRow = ({ taxonId, firstCheck, verdict, movingOn, ...history }: DaysRow): TaxonDays =>
  ({ taxonId, ...waitingDays({ firstCheck: firstCheck ?? undefined, verdict: verdict ?? undefined, movingOn: movingOn ?? undefined }, history) });
