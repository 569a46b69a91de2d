import { Injectable } from '@nestjs/common';
import type { PlaceInTree } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import type { Records } from '../database/prisma-door.ts';
import type { Caller } from '../http/caller.ts';

/** Closed places, and what lies in them, are left out once no plant stands there. */
const TREE = `
  WITH RECURSIVE tree AS (
    SELECT p.*, 0 AS depth, ARRAY[p.id] AS ids, ARRAY[lpad(p.walk_order::text, 6, '0') || p.name] AS walk, p.closed_on IS NOT NULL AS closed
    FROM place p WHERE p.programme_id = $1 AND p.parent_id IS NULL
    UNION ALL
    SELECT p.*, t.depth + 1, t.ids || p.id, t.walk || (lpad(p.walk_order::text, 6, '0') || p.name), t.closed OR p.closed_on IS NOT NULL
    FROM place p JOIN tree t ON t.programme_id = p.programme_id AND t.id = p.parent_id
  ), here AS (
    SELECT place_id, count(*)::int AS batches, sum(balance)::int AS plants
    FROM batch_state WHERE programme_id = $1 AND balance > 0 GROUP BY place_id
  ), within AS (
    SELECT place AS id, sum(here.plants)::int AS plants
    FROM tree JOIN here ON here.place_id = tree.id CROSS JOIN unnest(tree.ids) AS place GROUP BY place
  )
  SELECT t.id, t.kind, t.parent_id AS "parentId", t.name, t.walk_order AS "walkOrder", t.rows, t.partner_id AS "partnerId",
    t.closed_on AS "closedOn", t.note, t.round_every_days AS "roundEveryDays", t.depth, coalesce(here.batches, 0) AS batches, coalesce(here.plants, 0) AS plants,
    coalesce(within.plants, 0) AS "plantsWithin"
  FROM tree t LEFT JOIN here ON here.place_id = t.id LEFT JOIN within ON within.id = t.id
  WHERE NOT t.closed OR within.plants > 0
  ORDER BY t.walk, t.ids`;

@Injectable()
export class PlaceQueries {
  constructor(private readonly database: Database) {}

  /** The whole tree in walking order, with what stands where: one query, however many places there are. */
  tree(caller: Caller): Promise<PlaceInTree[]> {
    return this.database.inTransaction(caller, (sql) => sql.rows<PlaceInTree>(TREE, [caller.programmeId]));
  }

  /** Plants in a place and in all places within. */
  async plantsWithin(records: Records, programmeId: string, id: string): Promise<number> {
    const [row] = await records.$queryRaw<Array<{ plants: number }>>`
      WITH RECURSIVE inner_place AS (
        SELECT programme_id, id FROM place WHERE programme_id = ${programmeId}::uuid AND id = ${id}::uuid
        UNION ALL
        SELECT p.programme_id, p.id FROM place p JOIN inner_place i ON i.programme_id = p.programme_id AND i.id = p.parent_id
      )
      SELECT coalesce(sum(s.balance), 0)::int AS plants
      FROM inner_place i JOIN batch_state s ON s.programme_id = i.programme_id AND s.place_id = i.id`;
    return row?.plants ?? 0;
  }

  /** Batches that stood in a place before a day and on it, with plants that left later or are there still. */
  async batchesStandingOn(records: Records, programmeId: string, placeId: string, day: string): Promise<number> {
    const [row] = await records.$queryRaw<Array<{ batches: number }>>`
      SELECT count(DISTINCT y.batch_id)::int AS batches
      FROM stay y JOIN batch_state s ON s.programme_id = y.programme_id AND s.batch_id = y.batch_id
      WHERE y.programme_id = ${programmeId}::uuid AND y.place_id = ${placeId}::uuid AND y.from_day < ${day}::date AND (y.to_day IS NULL OR y.to_day > ${day}::date)
        AND (s.balance > 0 OR EXISTS (SELECT FROM movement m WHERE m.programme_id = y.programme_id AND m.batch_id = y.batch_id AND m.day > ${day}::date))`;
    return row?.batches ?? 0;
  }

  /** Whether one place is the other, or lies in it. */
  async liesIn(records: Records, programmeId: string, id: string, outer: string): Promise<boolean> {
    const [row] = await records.$queryRaw<Array<{ lies: boolean }>>`
      WITH RECURSIVE above AS (
        SELECT programme_id, id, parent_id FROM place WHERE programme_id = ${programmeId}::uuid AND id = ${id}::uuid
        UNION ALL
        SELECT p.programme_id, p.id, p.parent_id FROM place p JOIN above a ON p.programme_id = a.programme_id AND p.id = a.parent_id
      )
      SELECT EXISTS (SELECT FROM above WHERE id = ${outer}::uuid) AS lies`;
    return row?.lies ?? false;
  }

  /** Writes a place and all above it as they are, so that two moves that would close a ring cross, and the second starts again. */
  async holdAbove(records: Records, programmeId: string, id: string): Promise<void> {
    await records.$executeRaw`
      WITH RECURSIVE above AS (
        SELECT programme_id, id, parent_id FROM place WHERE programme_id = ${programmeId}::uuid AND id = ${id}::uuid
        UNION ALL
        SELECT p.programme_id, p.id, p.parent_id FROM place p JOIN above a ON p.programme_id = a.programme_id AND p.id = a.parent_id
      )
      UPDATE place SET walk_order = place.walk_order FROM above WHERE place.programme_id = above.programme_id AND place.id = above.id`;
  }
}
