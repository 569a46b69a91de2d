import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import pg from 'pg';

/**
 * Throws the built-in database away when nothing but the demo is in it. The ledger itself
 * forgets nothing, not even an example: so the whole database goes, or none of it.
 *
 * @param {{ url: (who: 'superuser', database: string) => string }} postgres
 * @param {string} database
 * @param {string} photoFolder the examples’ pictures go, too
 * @throws {Error} when there is a programme of somebody's own
 */
export async function dropDemo(postgres, database, photoFolder) {
  const isThere = await answered(postgres.url('superuser', 'postgres'), 'SELECT FROM pg_database WHERE datname = $1', [database]);
  if (isThere.length === 0) return;
  const programmes = await answered(postgres.url('superuser', database), 'SELECT id, is_demo FROM programme', []);
  if (programmes.some(({ is_demo: isDemo }) => !isDemo)) throw new Error('There is a programme of your own beside the demo. Nothing was thrown away.');
  await answered(postgres.url('superuser', 'postgres'), `DROP DATABASE ${pg.escapeIdentifier(database)} WITH (FORCE)`, []);
  for (const { id } of programmes) await rm(join(photoFolder, String(id)), { recursive: true, force: true });
}

/** @param {string} url @param {string} text @param {unknown[]} values @returns {Promise<Record<string, unknown>[]>} */
async function answered(url, text, values) {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query(text, values)).rows;
  } finally {
    await client.end();
  }
}
