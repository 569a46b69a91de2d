import pg from 'pg';
import type { Large } from './large-programme.ts';
import { newId } from '../support/people.ts';

/**
 * The least that writing entries could be, by a login under the same policies: it locks, reads what it is about,
 * inserts, updates, and commits, in as many round trips as the ledger takes. No thought, no lines in the books.
 */
export async function bareEntries({ api }: Pick<Large, 'api'>, programmeId: string, batchIds: readonly string[]) {
  const sql = new pg.Client({ connectionString: api.database.app });
  await sql.connect();
  const write = async (n: number): Promise<void> => {
    const [ids, about] = [Array.from({ length: n }, newId), Array.from({ length: n }, (_, at) => batchIds[at % batchIds.length])];
    await sql.query(`BEGIN; SELECT set_config('app.programme_id', '${programmeId}', true), set_config('app.person_id', '', true), set_config('app.partner_id', '', true)`);
    await sql.query('SELECT pg_advisory_xact_lock(hashtext($1::uuid::text)), s.* FROM batch_state s WHERE programme_id = $1 AND batch_id = ANY ($2::uuid[]) FOR UPDATE', [programmeId, about]);
    await sql.query(
      `WITH told AS (SELECT * FROM unnest($2::uuid[], $3::uuid[]) AS t (id, batch_id)), entered AS (
         INSERT INTO entry (programme_id, id, kind, observed_on, body, delivered_by, door, written_at, received_on)
         SELECT $1::uuid, id, 'noted', current_date, jsonb_build_object('kind', 'noted', 'batchId', batch_id), 'load', 'desk', now(), current_date FROM told)
       INSERT INTO entry_touch (programme_id, batch_id, entry_id) SELECT $1, batch_id, id FROM told`,
      [programmeId, ids, about],
    );
    await sql.query('UPDATE batch_state SET last_seen_on = current_date WHERE programme_id = $1 AND batch_id = ANY ($2::uuid[])', [programmeId, about]);
    await sql.query('COMMIT');
  };
  return { write, end: () => sql.end() };
}
