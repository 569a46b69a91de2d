import type pg from 'pg';
import type { Size } from './fill-programme.ts';
import { FIRST, placesOf } from './fill-sources.ts';
import { idAt } from './ids.ts';

/** Every hundred-and-twentieth time, plants of three stickings are mixed. */
export const MIXED = 'n % 120 IN (1, 2, 7)';

/**
 * What became of each sticking, stage by stage: a temporary table `fate`. A sixth is young and waits for its
 * verdict, a third stands potted, the rest is planted. Numbers of a row close.
 */
async function makeFates(sql: pg.Client, size: Size): Promise<void> {
  const { trays, benches, sites } = placesOf(size);
  const bench = (by: number): string => idAt('place', `${FIRST.bench} + (n * ${by}) % ${benches}`);
  await sql.query(`
    CREATE TEMP TABLE fate ON COMMIT DROP AS
    SELECT s.n, s.n * 4 + f.at AS b, f.at, f.stage::stage AS stage, f.came, f.gone_on, f.died, f.mixed, f.came - f.gone_on - f.died - f.mixed AS here, f.rooted,
      s.stuck_on, s.stuck_on + f.after AS opened_on, CASE WHEN f.came - f.gone_on - f.died - f.mixed = 0 THEN s.stuck_on + f.until END AS emptied_on,
      CASE f.stage WHEN 'cutting' THEN ${idAt('place', `${FIRST.tray} + n % ${trays}`)} WHEN 'liner' THEN ${bench(7)} WHEN 'potted' THEN ${bench(11)}
        ELSE ${idAt('place', `${FIRST.plot} + (n * 3) % ${sites * 10}`)} END AS place_id, ${bench(13)} AS later_place_id
    FROM (
      SELECT n, CASE WHEN n % 6 = 0 THEN 'young' WHEN n % 6 < 3 THEN 'potted' ELSE 'planted' END AS age,
        current_date - CASE WHEN n % 6 = 0 THEN 30 + n / 6 % 300 WHEN n % 6 < 3 THEN 400 + n % 365 ELSE 800 + n % 1500 END AS stuck_on
      FROM generate_series(0, ${size.stickings - 1}) n) s
    CROSS JOIN LATERAL (VALUES
      ('young', 0, 'cutting', 20, 0, 8, 0, 0, 0, NULL), ('potted', 0, 'cutting', 20, 9, 11, 0, 0, 300, 9), ('planted', 0, 'cutting', 20, 9, 11, 0, 0, 300, 9),
      ('potted', 1, 'liner', 9, 5, 1, 0, 240, NULL, 0), ('planted', 1, 'liner', 9, 5, 4, 0, 240, 320, 0),
      ('potted', 2, 'potted', 5, 0, 1, CASE WHEN ${MIXED} THEN 1 ELSE 0 END, 300, NULL, 0), ('planted', 2, 'potted', 5, 3, 1, 0, 300, NULL, 0),
      ('planted', 3, 'planted', 3, 0, 1, 0, 700, NULL, 0)) f (age, at, stage, came, gone_on, died, mixed, after, until, rooted)
    WHERE f.age = s.age`);
}

/** Stickings, batches, their movements and where they stood. One sticking in a hundred is of a tree that nobody knows. */
export async function fillBooks(sql: pg.Client, programmeId: string, size: Size): Promise<void> {
  const { donors, stands } = size;
  const run = (text: string): Promise<unknown> => sql.query(text, [programmeId]);
  await makeFates(sql, size);
  await run(`INSERT INTO sticking (programme_id, id, opening_entry_id, donor_tree_id, taxon_id, bundle_id, stuck_on)
    SELECT $1::uuid, ${idAt('sticking', 'n')}, ${idAt('opening', 'b')}, CASE WHEN n % 97 > 0 THEN ${idAt('donor', `n % ${donors}`)} END, ${idAt('taxon', `(n % ${stands}) % 2`)},
      CASE WHEN n % 97 > 0 THEN ${idAt('bundle', 'n')} END, stuck_on FROM fate WHERE at = 0`);
  await run(`INSERT INTO sticking_candidate (programme_id, sticking_id, donor_tree_id)
    SELECT $1::uuid, ${idAt('sticking', 'n')}, ${idAt('donor', `(n + c * ${stands}) % ${donors}`)} FROM fate, generate_series(0, 2) c WHERE at = 0 AND n % 97 = 0`);
  await run(`INSERT INTO tally (programme_id, sticking_id, stage, came_in, gone_on, died, unaccounted, not_rooted, thrown_out, given_out, restuck, mixed, here, died_of)
    SELECT $1::uuid, ${idAt('sticking', 'n')}, stage, came, gone_on, died, 0, 0, 0, 0, 0, mixed, here, jsonb_build_object('rot', died) FROM fate`);
  await run(`INSERT INTO batch (programme_id, id, sticking_id, stage, parent_id, opening_entry_id, opening_place_id, opened_on)
    SELECT $1::uuid, ${idAt('batch', 'b')}, ${idAt('sticking', 'n')}, stage, CASE WHEN at > 0 THEN ${idAt('batch', 'b - 1')} END, ${idAt('opening', 'b')}, place_id, opened_on FROM fate`);
  await run(`INSERT INTO batch_state (programme_id, batch_id, balance, place_id, rooted_ever, last_seen_on, last_look)
    SELECT $1::uuid, ${idAt('batch', 'b')}, here, CASE stage WHEN 'potted' THEN later_place_id ELSE place_id END, coalesce(rooted, 0), opened_on + 30, 'look' FROM fate`);
  await run(`INSERT INTO label (programme_id, code, batch_id) SELECT $1::uuid, 'L' || b, ${idAt('batch', 'b')} FROM fate`);
  await run(`INSERT INTO movement (programme_id, batch_id, seq, entry_id, day, effect, n, cause, to_stage)
    SELECT $1::uuid, ${idAt('batch', 'b')}, 0, ${idAt('opening', 'b')}, opened_on, CASE at WHEN 0 THEN 'stuck' ELSE 'wentIn' END, came, NULL, NULL::stage FROM fate
    UNION ALL SELECT $1::uuid, ${idAt('batch', 'b')}, 1, ${idAt('death', 'b')}, opened_on + 30, 'died', died, 'rot', NULL FROM fate WHERE died > 0
    UNION ALL SELECT $1::uuid, ${idAt('batch', 'b - 1')}, 2, ${idAt('opening', 'b')}, opened_on, 'wentOn', came, NULL, stage FROM fate WHERE at > 0
    UNION ALL SELECT $1::uuid, ${idAt('batch', 'b')}, 3, ${idAt('mixing', 'n / 120')}, opened_on + 70, 'mixedOut', mixed, NULL, NULL FROM fate WHERE mixed > 0`);
  await run(`INSERT INTO stay (programme_id, batch_id, seq, place_id, from_day, to_day, entry_id)
    SELECT $1::uuid, ${idAt('batch', 'b')}, 0, place_id, opened_on, CASE stage WHEN 'potted' THEN opened_on + 60 ELSE emptied_on END, ${idAt('opening', 'b')} FROM fate
    UNION ALL SELECT $1::uuid, ${idAt('batch', 'b')}, 1, later_place_id, opened_on + 60, NULL, ${idAt('opening', 'b')} FROM fate WHERE stage = 'potted'`);
  await fillMixed(run);
}

async function fillMixed(run: (text: string) => Promise<unknown>): Promise<void> {
  await run(`CREATE TEMP TABLE mixing ON COMMIT DROP AS
    SELECT n / 120 AS m, max(opened_on) + 70 AS day, sum(mixed)::int AS n, min(later_place_id::text)::uuid AS place_id, $1::uuid AS programme_id FROM fate WHERE mixed > 0 GROUP BY 1`);
  const fill = (text: string): Promise<unknown> => run(`${text} FROM mixing WHERE programme_id = $1`);
  await fill(`INSERT INTO batch (programme_id, id, stage, opening_entry_id, opening_place_id, opened_on) SELECT $1::uuid, ${idAt('mixed', 'm')}, 'potted', ${idAt('mixing', 'm')}, place_id, day`);
  await fill(`INSERT INTO batch_state (programme_id, batch_id, balance, place_id) SELECT $1::uuid, ${idAt('mixed', 'm')}, n, place_id`);
  await fill(`INSERT INTO movement (programme_id, batch_id, seq, entry_id, day, effect, n) SELECT $1::uuid, ${idAt('mixed', 'm')}, 0, ${idAt('mixing', 'm')}, day, 'mixedIn', n`);
  await fill(`INSERT INTO stay (programme_id, batch_id, seq, place_id, from_day, entry_id) SELECT $1::uuid, ${idAt('mixed', 'm')}, 0, place_id, day, ${idAt('mixing', 'm')}`);
  await run(`INSERT INTO mixed_part (programme_id, batch_id, from_batch_id, n) SELECT $1::uuid, ${idAt('mixed', 'n / 120')}, ${idAt('batch', 'b')}, mixed FROM fate WHERE mixed > 0`);
}
