import { readFile } from 'node:fs/promises';

/** Where the invented data lie. */
export const SEED = new URL('../../../prisma/seed/harrowdale/', import.meta.url);

/**
 * Stands, donor trees, sites and people of the demo. All invented; the positions lie in the open sea.
 *
 * @returns {Promise<any>}
 */
export async function readRecords() {
  return JSON.parse(await readFile(new URL('records.json', SEED), 'utf8'));
}
