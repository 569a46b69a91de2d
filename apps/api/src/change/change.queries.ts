import { Injectable } from '@nestjs/common';
import type { Change, ChangeKind } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';

/** A place in the feed, and the thing told there last. */
export interface FeedPlace {
  readonly place: number;
  readonly id: string;
}

export type ChangeRow = Change & FeedPlace & Record<string, unknown>;

/** So many get their place at one reading; after an import the next readings place the rest. */
const MOST_PLACED = 10_000;

const onEach = (column: string, kind: ChangeKind): string => `SELECT '${kind}' AS kind, e.${column} AS id WHERE e.${column} IS NOT NULL`;

/**
 * Whom a change concerns is asked by functions of the database; what an entry is about, of the tables, which show a
 * partner no entry.
 */
const changesFrom = (told: string): string => `
SELECT c.place, c.kind, c.id, c.is_made AS "isMade", to_char(c.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') AS at, e.kind AS said,
  coalesce((SELECT json_agg(json_build_object('kind', o.kind, 'id', o.id)) FROM (
    SELECT 'batch' AS kind, t.batch_id AS id FROM entry_touch t WHERE t.programme_id = $1 AND t.entry_id = coalesce(e.corrects_id, e.id)
    UNION ALL ${onEach('place_id', 'place')} UNION ALL ${onEach('donor_tree_id', 'donor-tree')} UNION ALL ${onEach('trip_id', 'trip')}
    UNION ALL ${onEach('workday_id', 'workday')} UNION ALL ${onEach('corrects_id', 'entry')}) o WHERE o.kind = ANY ($5)), '[]') AS "on"
FROM ${told}($2, $3) c LEFT JOIN entry e ON c.kind = 'entry' AND e.programme_id = $1 AND e.id = c.id
WHERE (c.place, c.id) > ($2, $4::uuid) AND c.kind = ANY ($5)
ORDER BY c.place, c.id LIMIT $6`;

const OF_PROGRAMME = changesFrom('changes_of_programme');
const OF_PARTNER = changesFrom('changes_of_partner');

@Injectable()
export class ChangeQueries {
  /** Gives what was committed since a place in the feed, and says which is the last. */
  async placeWhatWaits(sql: UnitOfWork): Promise<{ lastPlace: number; moreWait: boolean }> {
    return sql.one('SELECT last_place AS "lastPlace", more_wait AS "moreWait" FROM place_changes($1)', [MOST_PLACED]);
  }

  /** Changes after a place, up to another, of these kinds. */
  async between(sql: UnitOfWork, { programmeId, partnerId }: Caller, { place, id }: FeedPlace, upTo: number, kinds: readonly ChangeKind[], limit: number): Promise<ChangeRow[]> {
    return sql.rows<ChangeRow>(partnerId === undefined ? OF_PROGRAMME : OF_PARTNER, [programmeId, place, upTo, id, kinds, limit]);
  }
}
