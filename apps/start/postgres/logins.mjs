// The passwords of the embedded database: random, one a login, readable by whoever starts Sprigline and nobody else.
import { randomBytes } from 'node:crypto';
import { chmodSync, chownSync, existsSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** @typedef {'superuser' | 'owner' | 'app' | 'auth' | 'keeper'} LoginUse */
/** @typedef {{ name: string, password: string }} Login */
/** @typedef {Record<LoginUse, Login>} Logins */

const NAMES = /** @type {const} */ ({
  superuser: 'postgres',
  owner: 'sprigline_owner_login',
  app: 'sprigline_app_login',
  auth: 'sprigline_auth_login',
  keeper: 'sprigline_keeper_login',
});

/**
 * @param {string} home
 * @returns {Logins} the same ones every time
 */
export function keptLogins(home) {
  const file = join(home, 'logins.json');
  if (existsSync(file)) return JSON.parse(readFileSync(file, 'utf8'));

  const logins = /** @type {Logins} */ (
    Object.fromEntries(
      Object.entries(NAMES).map(([use, name]) => [use, { name, password: randomBytes(24).toString('base64url') }]),
    )
  );
  const half = `${file}.${process.pid}`;
  writeFileSync(half, `${JSON.stringify(logins, undefined, 2)}\n`, { mode: 0o600 });
  giveToOwnerOf(home, half);
  renameSync(half, file);
  return logins;
}

/**
 * Root may start what an ordinary user started before; that user must be able to go on afterwards.
 * @param {string} home
 * @param {string} file
 */
export function giveToOwnerOf(home, file) {
  chmodSync(file, 0o600);
  if (process.getuid?.() !== 0) return;
  const { uid, gid } = statSync(home);
  chownSync(file, uid, gid);
}
