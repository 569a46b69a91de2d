import pg from 'pg';
import { UnitOfWork } from '../database/unit-of-work.ts';

/** Works with one connection of its own, inside one transaction that sees the database at one moment. */
export async function withConnection<T>(url: string, begin: string, work: (sql: UnitOfWork, client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query(begin);
    const result = await work(new UnitOfWork(client), client);
    await client.query('COMMIT');
    return result;
  } finally {
    await client.end();
  }
}

/** Nothing is changed by looking. */
export const LOOK_ONLY = 'BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY';

export async function programmesOf(keeperUrl: string): Promise<string[]> {
  return withConnection(keeperUrl, LOOK_ONLY, async (sql) => (await sql.rows<{ id: string }>('SELECT id FROM programme ORDER BY handle')).map(({ id }) => id));
}
