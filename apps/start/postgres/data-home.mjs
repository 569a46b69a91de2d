// Where the embedded database keeps its data, the same place every time.
import { createHash } from 'node:crypto';
import { accessSync, chmodSync, constants, existsSync, mkdirSync, readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { isRoot, mayEnter, serverUser } from './server-user.mjs';

/** For root, when the clone lies where the server's user cannot go. */
const SYSTEM_HOME = '/var/lib/sprigline';

/**
 * The folder for everything the embedded database keeps:
 * `cluster/` (PostgreSQL's), `programs/`, `logins.json`, `running.json`, `postgres.log`.
 *
 * Usually `.data` in the clone. Started by root from a clone that only root may
 * enter, it is a folder under /var/lib/sprigline, and `.data/place` remembers it,
 * so that nobody's data seem to vanish when the modes of folders change later.
 *
 * @param {{ root: string, dataDir?: string | undefined }} options `root` is the clone; `dataDir` what the person asked for
 * @returns {string} an absolute path to a folder that exists and may be written to
 */
export function dataHome({ root, dataDir }) {
  const home = dataDir ? askedFor(resolve(root, dataDir)) : usual(join(root, '.data'));
  try {
    accessSync(home, constants.R_OK | constants.W_OK | constants.X_OK);
  } catch {
    throw new Error(
      `The data in ${home} belong to another user. Start Sprigline as that user, or set DATA_DIR to a folder of your own.`,
    );
  }
  return home;
}

/** @param {string} folder */
function askedFor(folder) {
  makeOpen(folder);
  if (!isReachable(folder)) {
    throw new Error(
      `DATA_DIR is ${folder}. PostgreSQL does not run as root, and the user it runs as may not enter that folder. ` +
        `Choose one that others may enter, such as ${SYSTEM_HOME}/data, or leave DATA_DIR out.`,
    );
  }
  return folder;
}

/** @param {string} folder */
function usual(folder) {
  makeOpen(folder);
  const remembered = rememberedPlace(folder);
  if (remembered !== undefined) return remembered;
  if (existsSync(join(folder, 'cluster')) || isReachable(folder)) return folder;

  const elsewhere = systemHome(folder);
  writeFileSync(join(folder, 'place'), `${elsewhere}\n${cloneOf(folder)}\n`);
  return elsewhere;
}

/**
 * A clone that was moved takes its data along. A copy begins with data of its
 * own: two services on the same books would surprise everybody.
 *
 * @param {string} folder
 * @returns {string | undefined}
 */
function rememberedPlace(folder) {
  const file = join(folder, 'place');
  if (!existsSync(file)) return undefined;
  const [home, clone] = readFileSync(file, 'utf8').trim().split('\n');
  const isCopy = clone !== cloneOf(folder) && (!isRoot() || existsSync(join(String(clone), '.data', 'place')));
  return isCopy ? undefined : home;
}

/** @param {string} folder */
const cloneOf = (folder) => realpathSync(join(folder, '..'));

/** @param {string} folder */
function systemHome(folder) {
  const clone = cloneOf(folder);
  const mark = createHash('sha256').update(clone).digest('hex').slice(0, 8);
  const home = join(SYSTEM_HOME, `${basename(clone)}-${mark}`);
  makeOpen(SYSTEM_HOME);
  makeOpen(home);
  return home;
}

/** @param {string} folder */
function isReachable(folder) {
  const user = serverUser(join(folder, 'cluster'), { mayCreate: true });
  return user === undefined || mayEnter(folder, user);
}

/**
 * A new folder that others may pass through but not list: what is secret in it has modes of its own.
 * @param {string} folder
 */
function makeOpen(folder) {
  if (existsSync(folder)) return;
  mkdirSync(folder, { recursive: true });
  chmodSync(folder, isRoot() ? 0o711 : 0o700);
}
