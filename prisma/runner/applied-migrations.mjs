// What the database remembers of its own making.

/** @typedef {import('./read-migrations.mjs').Migration} Migration */
/** @typedef {{ name: string, checksum: string }} Applied */

/**
 * @param {import('pg').ClientBase} client
 * @returns {Promise<Applied[]>} oldest first; empty for a database that was never migrated
 */
export async function readApplied(client) {
  const { rows: found } = await client.query(`SELECT to_regclass('public.schema_migration') IS NOT NULL AS exists`);
  if (!found[0].exists) return [];
  const { rows } = await client.query('SELECT name, checksum FROM public.schema_migration ORDER BY name COLLATE "C"');
  return rows;
}

/**
 * Everybody may read it: the app asks before it starts whether a migration is missing.
 * @param {import('pg').ClientBase} client
 */
export async function makeTable(client) {
  await client.query(`
    CREATE TABLE IF NOT EXISTS public.schema_migration (
      name text COLLATE "C" CONSTRAINT schema_migration_is_applied_once PRIMARY KEY,
      checksum text NOT NULL CONSTRAINT schema_migration_checksum_is_sha256 CHECK (checksum ~ '^[0-9a-f]{64}$'),
      applied_at timestamptz NOT NULL DEFAULT now()
    )`);
  await client.query('GRANT SELECT ON public.schema_migration TO sprigline_app, sprigline_auth, sprigline_keeper');
}

/**
 * What is left to do, if the database and the files tell the same story.
 *
 * @param {readonly Migration[]} migrations
 * @param {readonly Applied[]} applied
 * @returns {Migration[]}
 */
export function pendingMigrations(migrations, applied) {
  const byName = new Map(migrations.map((migration) => [migration.name, migration]));
  for (const { name, checksum } of applied) {
    const migration = byName.get(name);
    if (!migration) {
      throw new Error(
        `The database is newer than this code: it has "${name}", which the code does not know. ` +
          'Start the version that wrote it, or a later one. Nothing was changed.',
      );
    }
    if (migration.checksum !== checksum) {
      throw new Error(
        `The migration "${name}" was changed after this database had run it. ` +
          'Put the file back as it was, and write the change as a new migration. Nothing was changed.',
      );
    }
  }
  const last = applied.at(-1)?.name ?? '';
  const pending = migrations.slice(applied.length);
  const late = migrations.find(({ name }) => name < last && !applied.some((one) => one.name === name));
  if (late) {
    throw new Error(
      `The migration "${late.name}" is older than "${last}", which this database has run. Give it a newer time. Nothing was changed.`,
    );
  }
  return pending;
}
