import { Injectable } from '@nestjs/common';
import type { BatchOnRound, Round } from '@sprigline/contract';
import { DomainError, type Moment } from '@sprigline/domain';
import { SHOWN, SHOWN_FROM } from '../batch/shown.queries.ts';
import { Database } from '../database/database.ts';
import { known } from '../database/known.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';
import { placeStoryOf } from '../place/place-story.queries.ts';
import { placeFound } from './place-found.ts';

/** What the clock on the wall shows. @param at a moment, as the database tells it */
function momentIn(zone: string, at: string): Moment {
  const said = new Intl.DateTimeFormat('sv-SE', { timeZone: zone, dateStyle: 'short', timeStyle: 'short' }).format(new Date(at));
  const [day = '', clock = ''] = said.split(' ');
  const [hour = '0', minute = '0'] = clock.split(':');
  return { day, minute: Number(hour) * 60 + Number(minute) };
}

interface StopRow extends Record<string, unknown> {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly path: string[];
  readonly batches: BatchOnRound[];
}

/** What the count says now, if it has been corrected: the last replacement, unless it was withdrawn after that. */
const LAST_COUNT = `
  SELECT json_build_object('day', coalesce((c.body #>> '{instead,observedOn}')::date, e.observed_on), 'alive', (said ->> 'alive')::int,
    'rooted', (said ->> 'rooted')::int, 'look', said ->> 'look')
  FROM entry_touch t JOIN entry e ON e.programme_id = $1 AND e.id = t.entry_id AND e.kind = 'counted' AND NOT e.author_unverified
  LEFT JOIN LATERAL (
    SELECT kind, body FROM entry WHERE programme_id = $1 AND corrects_id = e.id AND NOT author_unverified ORDER BY received_at DESC, id DESC LIMIT 1) c ON true
  CROSS JOIN LATERAL coalesce(c.body #> '{instead,saying}', e.body) AS said
  WHERE t.programme_id = $1 AND t.batch_id = b.id AND c.kind IS DISTINCT FROM 'withdrawn' AND NOT said ? 'sampleOf' AND said ->> 'batchId' = b.id::text
  ORDER BY coalesce((c.body #>> '{instead,observedOn}')::date, e.observed_on) DESC, e.observed_minute DESC NULLS LAST, e.id DESC LIMIT 1`;

const ROUND = `
WITH RECURSIVE walk AS (
  SELECT id, name, kind, ARRAY[]::text[] AS path, ARRAY[]::text[] AS way FROM place WHERE programme_id = $1 AND id = $2
  UNION ALL
  SELECT p.id, p.name, p.kind, walk.path || walk.name::text, walk.way || lpad(p.walk_order::text, 6, '0') || p.name::text || p.id::text
  FROM walk JOIN place p ON p.programme_id = $1 AND p.parent_id = walk.id
)
SELECT walk.id, walk.name, walk.kind, walk.path, (
  SELECT coalesce(json_agg(x ORDER BY x.first_row NULLS LAST, x.label, x.id), '[]') FROM (
    SELECT ${SHOWN}, substring(b.rows FROM '^\\d+')::int AS first_row, (${LAST_COUNT}) AS "lastCount"
    FROM ${SHOWN_FROM} WHERE b.programme_id = $1 AND s.place_id = walk.id AND s.balance > 0) x) AS batches
FROM walk ORDER BY walk.way`;

/** The batches of a printed list that still have plants, in printed order, each where it stands now. */
const LISTED = `
WITH RECURSIVE walk AS (
  SELECT id, name, kind, ARRAY[]::text[] AS path FROM place WHERE programme_id = $1 AND parent_id IS NULL
  UNION ALL SELECT p.id, p.name, p.kind, walk.path || walk.name::text FROM walk JOIN place p ON p.programme_id = $1 AND p.parent_id = walk.id
)
SELECT walk.id, walk.name, walk.kind, walk.path, (
  SELECT json_agg(x) FROM (SELECT ${SHOWN}, (${LAST_COUNT}) AS "lastCount" FROM ${SHOWN_FROM} WHERE b.programme_id = $1 AND b.id = n.batch_id) x) AS batches
FROM work_list_line n JOIN batch_state here ON here.programme_id = $1 AND here.batch_id = n.batch_id AND here.balance > 0
JOIN walk ON walk.id = here.place_id
WHERE n.programme_id = $1 AND n.work_list_id = $2 ORDER BY n.number`;

@Injectable()
export class RoundQueries {
  constructor(private readonly database: Database) {}

  /** @throws DomainError `record/unknown` */
  at(caller: Caller, placeId: string): Promise<Round> {
    return this.database.inTransaction(caller, async (sql) => {
      const walk = await walkOf(sql, caller.programmeId, placeId);
      const story = await placeStoryOf(sql, caller.programmeId, [placeId]);
      return { ...walk, ...placeFound(placeId, story, caller, momentIn(caller.zone, story.at)) };
    });
  }

  /** A round along a printed list; no place is looked at on the way. @throws DomainError `record/unknown` */
  along(caller: Caller, workListId: string): Promise<Round> {
    return this.database.inTransaction(caller, async (sql) => {
      const list = known(await sql.maybe<{ kind: string }>('SELECT kind FROM work_list WHERE programme_id = $1 AND id = $2', [caller.programmeId, workListId]));
      const rows = await sql.rows<StopRow>(LISTED, [caller.programmeId, workListId]);
      const stops = rows.map(({ id, name, kind, path, batches }) => ({ place: { id, name, kind }, path: [list.kind, ...path], batches }));
      return { place: { id: workListId, name: list.kind, kind: 'workList' }, stops, taps: [], incidents: [], noEntryBefore: null };
    });
  }
}

async function walkOf(sql: UnitOfWork, programmeId: string, placeId: string): Promise<Pick<Round, 'place' | 'stops'>> {
  const rows = await sql.rows<StopRow>(ROUND, [programmeId, placeId]);
  const [place] = rows;
  if (!place) throw new DomainError('record/unknown', 'no place has this id', { id: placeId });

  return {
    place: { id: place.id, name: place.name, kind: place.kind },
    stops: rows
      .filter(({ batches }) => batches.length > 0)
      .map(({ id, name, kind, path, batches }) => ({ place: { id, name, kind }, path, batches })),
  };
}
