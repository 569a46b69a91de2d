import type pg from 'pg';
import { byHand, taxonByHand } from '../support/books-by-hand.ts';

/** How large a programme is; plants are twenty a sticking. */
export interface Size {
  readonly stands: number;
  readonly donors: number;
  readonly stickings: number;
}

/**
 * Fills a programme by set-based SQL: stands, donor trees, stickings with their books. Entries are left out but
 * for one that stands for all, since no reading of a stand looks at them.
 *
 * @returns the stand that is read
 */
export async function fillProgramme(sql: pg.Client, programmeId: string, { stands, donors, stickings }: Size): Promise<string> {
  const hand = await byHand(sql, programmeId);
  const { entryId, placeId } = hand;
  const taxonId = await taxonByHand(hand, 'Juniperus communis', 'Juniper');
  const id = (kind: number, at: string): string => `('0190000${kind}-0000-7000-8000-' || lpad(to_hex(${at}), 12, '0'))::uuid`;
  await sql.query(`INSERT INTO stand (programme_id, id, name) SELECT $1, ${id(1, 'n')}, 'Stand ' || n FROM generate_series(0, $2::int - 1) n`, [programmeId, stands]);
  await sql.query(
    `INSERT INTO donor_tree (programme_id, id, label, stand_id, taxon_id) SELECT $1, ${id(2, 'n')}, 'D' || n, ${id(1, 'n % $3::int')}, $4 FROM generate_series(0, $2::int - 1) n`,
    [programmeId, donors, stands, taxonId],
  );
  await sql.query(
    `INSERT INTO sticking (programme_id, id, opening_entry_id, donor_tree_id, taxon_id, stuck_on)
     SELECT $1, ${id(3, 'n')}, $4, ${id(2, 'n % $3::int')}, $5, date '2020-10-01' + n % 1500 FROM generate_series(0, $2::int - 1) n`,
    [programmeId, stickings, donors, entryId, taxonId],
  );
  await sql.query(
    `INSERT INTO tally (programme_id, sticking_id, stage, came_in, gone_on, died, unaccounted, not_rooted, thrown_out, given_out, restuck, here, died_of)
     SELECT $1, ${id(3, 'n')}, s.stage::stage, s.came_in, s.gone_on, s.died, 0, 0, 0, 0, 0, s.came_in - s.gone_on - s.died, jsonb_build_object('rot', s.died)
     FROM generate_series(0, $2::int - 1) n, (VALUES ('cutting', 20, 9, 8), ('liner', 9, 5, 1), ('potted', 5, 0, 1)) s(stage, came_in, gone_on, died)`,
    [programmeId, stickings],
  );
  await sql.query(
    `INSERT INTO batch (programme_id, id, sticking_id, stage, opening_entry_id, opening_place_id, opened_on)
     SELECT $1, ${id(4, 'n * 3 + s.at')}, ${id(3, 'n')}, s.stage::stage, $3, $4, date '2020-10-01' + n % 1500
     FROM generate_series(0, $2::int - 1) n, (VALUES (0, 'cutting'), (1, 'liner'), (2, 'potted')) s(at, stage)`,
    [programmeId, stickings, entryId, placeId],
  );
  await sql.query(
    `INSERT INTO batch_state (programme_id, batch_id, balance, place_id, rooted_now, rooted_ever)
     SELECT programme_id, id, CASE stage WHEN 'cutting' THEN 3 WHEN 'liner' THEN 3 ELSE 4 END, $2, NULL, CASE stage WHEN 'cutting' THEN 9 ELSE 0 END FROM batch WHERE programme_id = $1`,
    [programmeId, placeId],
  );
  return '01900001-0000-7000-8000-000000000000';
}
