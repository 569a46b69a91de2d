import { Injectable } from '@nestjs/common';
import type { NewWorkList } from '@sprigline/contract';
import { type BatchAtHand, stagesOf } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';

/** So many are looked at; a programme that has more at one stage chooses a place first. */
const MOST_LOOKED_AT = 20_000;

export interface Candidate extends BatchAtHand {
  readonly id: string;
  /** Nothing for a mixed batch. */
  readonly taxonId: string | null;
}

/** Places in walking order, each with the way to it, whether something above it is a house, and whether it is in the hands of a partner. */
const CANDIDATES = `
WITH RECURSIVE walk AS (
  SELECT id, kind = 'house' AS covered, kind = 'partner' AS theirs, ARRAY[lpad(walk_order::text, 6, '0'), name::text, id::text] AS way FROM place WHERE programme_id = $1 AND parent_id IS NULL
  UNION ALL
  SELECT p.id, walk.covered OR p.kind = 'house', walk.theirs OR p.kind = 'partner', walk.way || lpad(p.walk_order::text, 6, '0') || p.name::text || p.id::text
  FROM walk JOIN place p ON p.programme_id = $1 AND p.parent_id = walk.id
)
SELECT b.id, k.taxon_id AS "taxonId", b.stage, s.balance, s.rooted_now AS "rootedNow", s.held, s.unconfirmed, present_day($7) - k.stuck_on AS "daysSinceStuck",
  s.called_on IS NOT NULL AS "isCalled", walk.covered AS "isUnderCover"
FROM walk
JOIN batch_state s ON s.programme_id = $1 AND s.place_id = walk.id AND s.balance > 0
JOIN batch b ON b.programme_id = $1 AND b.id = s.batch_id AND b.stage = ANY ($2::stage[])
LEFT JOIN sticking k ON k.programme_id = $1 AND k.id = b.sticking_id
LEFT JOIN donor_tree d ON d.programme_id = $1 AND d.id = k.donor_tree_id
WHERE ($3::uuid IS NULL OR $3::text = ANY (walk.way)) AND ($4::uuid IS NULL OR d.stand_id = $4) AND ($5::uuid IS NULL OR k.taxon_id = $5)
  AND ($6::int IS NULL OR s.balance <= $6)
  -- What a partner keeps is theirs to pot and to plant, unless somebody asks for that very place.
  AND (NOT walk.theirs OR $3::uuid IS NOT NULL)
ORDER BY walk.way, substring(b.rows FROM '^\\d+')::int NULLS LAST,
  (SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.batch_id = b.id ORDER BY l.given_at DESC, l.code LIMIT 1) NULLS LAST, b.id
LIMIT ${MOST_LOOKED_AT}`;

type Row = Record<string, unknown> & { [K in keyof Candidate]: Candidate[K] | null };

@Injectable()
export class CandidateQueries {
  /** Batches at the right stage where one asked for them, in the order in which one walks past them. */
  async at(sql: UnitOfWork, { programmeId, zone }: Caller, { kind, asked }: NewWorkList): Promise<Candidate[]> {
    const { placeId, standId, taxonId, atMost } = asked;
    const rows = await sql.rows<Row>(CANDIDATES, [programmeId, [...stagesOf(kind)], placeId, standId, taxonId, atMost, zone]);
    return rows.map((row) => ({ ...row, rootedNow: row.rootedNow ?? undefined, daysSinceStuck: row.daysSinceStuck ?? undefined }) as Candidate);
  }
}
