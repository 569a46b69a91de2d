import pg from 'pg';

/**
 * Throws the built-in database away when nothing but the demo is in it. The ledger itself
 * forgets nothing, not even an example: so the whole database goes, or none of it.
 *
 * @param {{ url: (who: 'superuser', database: string) => string }} postgres
 * @param {string} database
 * @throws {Error} when there is a programme of somebody's own
 */
export async function dropDemo(postgres, database) {
  const isThere = await answered(postgres.url('superuser', 'postgres'), 'SELECT count(*)::int AS n FROM pg_database WHERE datname = $1', [database]);
  if (isThere === 0) return;
  const own = await answered(postgres.url('superuser', database), 'SELECT count(*)::int AS n FROM programme WHERE NOT is_demo', []);
  if (own > 0) throw new Error('There is a programme of your own beside the demo. Nothing was thrown away.');
  await answered(postgres.url('superuser', 'postgres'), `DROP DATABASE ${pg.escapeIdentifier(database)} WITH (FORCE)`, []);
}

/** @param {string} url @param {string} text @param {unknown[]} values @returns {Promise<number>} */
async function answered(url, text, values) {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query(text, values)).rows[0]?.n ?? 0;
  } finally {
    await client.end();
  }
}
