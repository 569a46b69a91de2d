import { Injectable } from '@nestjs/common';
import type { ReadingFilter } from '@sprigline/contract';
import { EFFECTS_IN, type Stage } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { PLACES_WITH_INCIDENTS } from '../incident/incident.queries.ts';
import { chosenBatches } from './chosen-batches.ts';

/** By how much the plants of a stage became more or fewer on a day. */
export interface Change {
  readonly day: string;
  readonly stage: Stage;
  readonly n: number;
}

/** Batches that somebody counted or checked on a day. */
export interface Looked {
  readonly day: string;
  readonly batches: number;
}

/** A time at a place: from which day until which, the latter not there while it goes on. */
export interface TimeAtPlace {
  readonly id: string;
  readonly placeId: string;
  readonly from: string;
  readonly until: string | null;
}

/** What the axis is drawn from, and where there is something to mark on it. */
export interface AxisRows extends Record<string, unknown> {
  readonly changes: Change[];
  readonly looked: Looked[];
  /** Places at which an incident was ever told. */
  readonly troubled: string[];
}

const IN = EFFECTS_IN.map((effect) => `'${effect}'`).join(', ');

@Injectable()
export class TimeAxisQueries {
  /** What changed, and who looked, day by day; not beyond the day of the reading. */
  async changes(sql: UnitOfWork, programmeId: string, filter: ReadingFilter, asOf: string): Promise<AxisRows> {
    const { text, values } = chosenBatches(programmeId, filter);
    const day = `$${values.length + 1}`;
    return sql.one(
      `WITH RECURSIVE ${text},
       changes AS (
         SELECT m.day, b.stage, sum(CASE WHEN m.effect IN (${IN}) THEN m.n ELSE -m.n END)::int AS n
         FROM batches b JOIN movement m ON m.programme_id = $1 AND m.batch_id = b.id
         WHERE m.day <= ${day}::date GROUP BY m.day, b.stage),
       looked AS (
         SELECT e.observed_on AS day, count(DISTINCT b.id)::int AS batches
         FROM batches b
         JOIN entry_touch t ON t.programme_id = $1 AND t.batch_id = b.id
         JOIN entry e ON e.programme_id = $1 AND e.id = t.entry_id AND e.kind IN ('counted', 'checked') AND e.observed_on <= ${day}::date
         WHERE NOT EXISTS (SELECT FROM entry w WHERE w.programme_id = $1 AND w.corrects_id = e.id AND w.kind = 'withdrawn')
         GROUP BY e.observed_on)
       SELECT (SELECT coalesce(json_agg(c), '[]') FROM changes c) AS changes, (SELECT coalesce(json_agg(l), '[]') FROM looked l) AS looked,
         (SELECT coalesce(json_agg(p.id), '[]') FROM (${PLACES_WITH_INCIDENTS}) p) AS troubled`,
      [...values, asOf],
    );
  }

  /** How many of the chosen batches stood there in that time, where any did. */
  async stoodThere(sql: UnitOfWork, programmeId: string, filter: ReadingFilter, times: readonly TimeAtPlace[]): Promise<{ id: string; place: string; batches: number }[]> {
    if (times.length === 0) return [];
    const { text, values } = chosenBatches(programmeId, filter);
    return sql.rows(
      `WITH RECURSIVE ${text},
       asked AS (SELECT * FROM jsonb_to_recordset($${values.length + 1}::jsonb) AS x(id uuid, "placeId" uuid, "from" date, until date)),
       inside AS (
         SELECT id, "placeId" AS place_id FROM asked
         UNION SELECT i.id, p.id FROM inside i JOIN place p ON p.programme_id = $1 AND p.parent_id = i.place_id)
       SELECT a.id, pl.name AS place, count(DISTINCT b.id)::int AS batches
       FROM asked a
       JOIN place pl ON pl.programme_id = $1 AND pl.id = a."placeId"
       JOIN inside i ON i.id = a.id
       JOIN stay s ON s.programme_id = $1 AND s.place_id = i.place_id AND (a.until IS NULL OR s.from_day <= a.until) AND (s.to_day IS NULL OR s.to_day >= a."from")
       JOIN batches b ON b.id = s.batch_id
       GROUP BY a.id, pl.name`,
      [...values, JSON.stringify(times)],
    );
  }
}
