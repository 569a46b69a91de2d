import { createHash } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/**
 * @typedef {object} Migration
 * @property {string} name the folder's, such as 20260301090000_batches
 * @property {string} file where the SQL is
 * @property {string} sql
 * @property {string} checksum SHA-256 of the file, in hexadecimal
 */

/** This repository's own migrations. */
export const MIGRATIONS_FOLDER = fileURLToPath(new URL('../migrations', import.meta.url));

/**
 * @param {string} [folder]
 * @returns {Migration[]} in the order in which they are applied: that of their names
 */
export function readMigrations(folder = MIGRATIONS_FOLDER) {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => readMigration(folder, entry.name))
    .sort((one, other) => (one.name < other.name ? -1 : 1));
}

/**
 * @param {string} folder
 * @param {string} name
 * @returns {Migration}
 */
function readMigration(folder, name) {
  if (!/^\d{14}_[a-z0-9_]+$/.test(name)) {
    throw new Error(`"${name}" in ${folder} is not named like a migration: 14 digits of time, _, what it does in small letters.`);
  }
  const file = join(folder, name, 'migration.sql');
  const sql = readFileSync(file, 'utf8');
  return { name, file, sql, checksum: createHash('sha256').update(sql).digest('hex') };
}
