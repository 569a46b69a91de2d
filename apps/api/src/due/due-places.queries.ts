import { Injectable } from '@nestjs/common';
import type { UnitOfWork } from '../database/unit-of-work.ts';

/** A place that one walks, or that holds what is due. */
export interface PlaceRow {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly path: string[];
  /** Places it lies in, itself the last. */
  readonly ids: string[];
  /** What one walks to get there. */
  readonly walkId: string;
  readonly everyDays: number | null;
  readonly toldById: string | null;
  readonly siteId: string | null;
  /** In the hands of a partner: what is due there is theirs to do. */
  readonly isTheirs: boolean;
}

/** With its rank in the walking order. */
export type RankedPlace = PlaceRow & { readonly rank: number };

export interface Asked {
  readonly today: string;
  readonly seasonStartsIn: number;
  readonly gradeEveryDays: number;
  readonly putOffs: { kind: string; placeId: string; batchId: string | null; seasonYear: number | null; dueOn: string; until: string; reason: string; by: string; at: string }[];
  readonly places: readonly PlaceRow[];
}

/** A tray or a plot is walked with what it lies on, unless it has an interval of its own. */
const TREE = `
  tree AS (
  SELECT p.id, p.name, p.kind, ARRAY[]::text[] AS path, ARRAY[p.id] AS ids, p.id AS walk_id, p.round_every_days AS every,
    CASE WHEN p.round_every_days IS NOT NULL THEN p.id END AS told_by, CASE WHEN p.kind = 'site' THEN p.id END AS site_id,
    p.kind = 'partner' AS theirs, ARRAY[lpad(p.walk_order::text, 6, '0') || p.name] AS way
  FROM place p WHERE p.programme_id = $1 AND p.parent_id IS NULL
  UNION ALL
  SELECT p.id, p.name, p.kind, t.path || t.name::text, t.ids || p.id,
    CASE WHEN p.kind IN ('tray', 'plot') AND p.round_every_days IS NULL THEN t.walk_id ELSE p.id END,
    coalesce(p.round_every_days, t.every), CASE WHEN p.round_every_days IS NOT NULL THEN p.id ELSE t.told_by END,
    CASE WHEN p.kind = 'site' THEN p.id ELSE t.site_id END, t.theirs OR p.kind = 'partner', t.way || (lpad(p.walk_order::text, 6, '0') || p.name)
  FROM tree t JOIN place p ON p.programme_id = $1 AND p.parent_id = t.id
  )`;

/** The newest put-off first: those of long ago can be of nothing that is due now. Places in walking order. */
const ASKED = `
WITH RECURSIVE ${TREE}
SELECT present_day(p.zone) AS today, p.season_starts_in AS "seasonStartsIn", p.grade_check_every_days AS "gradeEveryDays",
  (SELECT coalesce(json_agg(json_build_object('kind', o.kind, 'placeId', o.place_id, 'batchId', o.batch_id, 'seasonYear', o.season_year, 'dueOn', o.due_on,
      'until', o.until, 'reason', o.reason, 'by', by.name, 'at', to_char(o.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')) ORDER BY o.at DESC, o.id DESC), '[]')
    FROM put_off o JOIN person by ON by.programme_id = $1 AND by.id = o.by_person_id
    WHERE o.programme_id = $1 AND o.until > present_day(p.zone) - 31) AS "putOffs",
  (SELECT coalesce(json_agg(json_build_object('id', id, 'name', name, 'kind', kind, 'path', path, 'ids', ids, 'walkId', walk_id, 'everyDays', every,
      'toldById', told_by, 'siteId', site_id, 'isTheirs', theirs) ORDER BY way, ids), '[]') FROM tree) AS places
FROM programme p WHERE p.id = $1`;

@Injectable()
export class DuePlacesQueries {
  /** Today, what people decided, and where they walk. */
  asked(sql: UnitOfWork, programmeId: string): Promise<Asked> {
    return sql.one<Asked & Record<string, unknown>>(ASKED, [programmeId]);
  }
}
