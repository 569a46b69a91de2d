import { randomBytes } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * The secret that signs sessions: the same at every start, or everybody is signed out.
 *
 * @param {string} folder
 * @returns {string}
 */
export function keptSecret(folder) {
  const file = join(folder, 'secret');
  if (!existsSync(file)) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(file, randomBytes(32).toString('base64url'), { mode: 0o600, flag: 'wx' });
  }
  return readFileSync(file, 'utf8').trim();
}
