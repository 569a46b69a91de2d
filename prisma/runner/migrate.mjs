import pg from 'pg';
import { makeTable, pendingMigrations, readApplied } from './applied-migrations.mjs';
import { readMigrations } from './read-migrations.mjs';

/** Any number will do, as long as every version of Sprigline uses the same: two that start at once take turns. */
const LOCK = 7_746_544_631n;

/**
 * Brings the database up to the migrations in the folder, each in a transaction of its own.
 *
 * @param {object} options
 * @param {string} options.url connection string of the owner's login
 * @param {string} [options.folder] this repository's own when left out
 * @param {(name: string) => void} [options.onApplied] called after each
 * @returns {Promise<string[]>} the names of those that were applied now
 * @throws Error when an applied file was changed, when the database is newer
 *   than the files, or when a migration fails; what came before it stays
 */
export async function migrate({ url, folder, onApplied = () => {} }) {
  const migrations = readMigrations(folder);
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query('SELECT pg_advisory_lock($1)', [String(LOCK)]);
    const pending = pendingMigrations(migrations, await readApplied(client));
    await makeTable(client);
    for (const migration of pending) {
      await apply(client, migration);
      onApplied(migration.name);
    }
    return pending.map(({ name }) => name);
  } finally {
    await client.end();
  }
}

/**
 * @param {object} options
 * @param {string} options.url
 * @param {string} [options.folder]
 * @returns {Promise<string[]>} the names of those that are not applied yet
 */
export async function readPending({ url, folder }) {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return pendingMigrations(readMigrations(folder), await readApplied(client)).map(({ name }) => name);
  } finally {
    await client.end();
  }
}

/**
 * @param {pg.Client} client
 * @param {import('./read-migrations.mjs').Migration} migration
 */
async function apply(client, { name, file, sql, checksum }) {
  await client.query('BEGIN');
  try {
    const before = await transaction(client);
    await client.query(sql);
    if ((await transaction(client)) !== before) {
      throw new Error('It ends the transaction itself, so half of it may stay. Take COMMIT and ROLLBACK out.');
    }
    await client.query('INSERT INTO public.schema_migration (name, checksum) VALUES ($1, $2)', [name, checksum]);
    await client.query('COMMIT');
  } catch (error) {
    await client.query('ROLLBACK');
    throw new Error(`The migration "${name}" failed at ${file}${line(sql, error)}: ${words(error)}`, { cause: error });
  }
}

/** @param {pg.Client} client */
async function transaction(client) {
  const { rows } = await client.query('SELECT pg_current_xact_id()::text AS id');
  return rows[0].id;
}

/**
 * @param {string} sql
 * @param {unknown} error
 */
function line(sql, error) {
  const position = error instanceof pg.DatabaseError ? Number(error.position) : Number.NaN;
  return Number.isNaN(position) ? '' : `:${[...sql].slice(0, position - 1).filter((sign) => sign === '\n').length + 1}`;
}

/** @param {unknown} error */
function words(error) {
  if (!(error instanceof Error)) return String(error);
  const { detail, hint, where } = /** @type {{ detail?: string, hint?: string, where?: string }} */ (error);
  return [error.message, detail, hint, where].filter(Boolean).join('\n  ');
}
