// PostgreSQL refuses to run as root. Started by root, it runs as somebody with fewer rights.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';

/** @typedef {{ uid: number, gid: number }} ServerUser */

/** The system user that is made when root starts Sprigline. */
const OWN_USER = 'sprigline';

/** @returns {boolean} */
export const isRoot = () => process.getuid?.() === 0;

/**
 * Who the server must run as, or nothing when it may run as whoever calls.
 *
 * @param {string} cluster the folder of the data; its owner goes on owning it
 * @param {{ mayCreate: boolean }} options whether a system user may be added to this machine
 * @returns {ServerUser | undefined}
 */
export function serverUser(cluster, { mayCreate }) {
  if (!isRoot()) return undefined;

  if (existsSync(cluster)) {
    const { uid, gid } = statSync(cluster);
    if (uid !== 0) return { uid, gid };
  }
  const user = lookUp(OWN_USER) ?? (mayCreate ? create() : undefined) ?? lookUp('nobody');
  if (!user) {
    throw new Error(
      'PostgreSQL refuses to run as root, and this machine has no user to run it as. ' +
        `Add one (useradd --system ${OWN_USER}), or start Sprigline as an ordinary user.`,
    );
  }
  return user;
}

/**
 * Asked of the system itself, because modes alone do not tell (access lists, mounts).
 *
 * @param {string} folder
 * @param {ServerUser} user
 * @returns {boolean} whether that user may enter the folder
 */
export function mayEnter(folder, user) {
  return spawnSync('/bin/sh', ['-c', 'cd -- "$0"', folder], { ...user, cwd: '/' }).status === 0;
}

/**
 * @param {string} name
 * @returns {ServerUser | undefined}
 */
function lookUp(name) {
  const [uid, gid] = ['-u', '-g'].map((part) => {
    const { status, stdout } = spawnSync('id', [part, name], { encoding: 'utf8' });
    return status === 0 ? Number(stdout) : Number.NaN;
  });
  return uid !== undefined && gid !== undefined && uid > 0 && gid >= 0 ? { uid, gid } : undefined;
}

/** @returns {ServerUser | undefined} */
function create() {
  spawnSync('useradd', ['--system', '--user-group', '--no-create-home', '--shell', '/usr/sbin/nologin', OWN_USER]);
  return lookUp(OWN_USER);
}
