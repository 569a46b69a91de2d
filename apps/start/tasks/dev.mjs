import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readFileSync, readdirSync, watch } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureBuilt } from '../steps/build.mjs';
import { openDatabase } from '../steps/open-database.mjs';
import { isBeingStopped, onStop } from '../steps/stopping.mjs';

/** Compiled on every change, in the order in which they stand on each other. */
const COMPILED = ['packages/domain', 'packages/contract', 'apps/api'];

/** tsc writes many files at a time. */
const QUIET_MILLISECONDS = 300;

/**
 * The database stays up; the compilers watch; the server is a process of its
 * own that is started again when what it stands on has changed. Pages change
 * without that, because Next watches them itself.
 *
 * @param {{ root: string, settings: import('../settings.mjs').Settings, say: (words: string) => void }} options
 */
export async function dev({ root, settings, say }) {
  await ensureBuilt(root, say, ['@sprigline/api']);
  const database = await openDatabase({ root, settings, say });
  for (const folder of COMPILED) compile(join(root, folder), join(root, 'node_modules', '.bin', 'tsc'));

  const outputs = COMPILED.map((folder) => join(root, folder, 'dist'));
  const server = restartable(join(root, 'apps', 'web'), database, () => printOf(outputs));
  for (const folder of outputs) watch(folder, { recursive: true }, server.restartSoon);
}

/**
 * @param {string} folder
 * @param {string} tsc
 */
function compile(folder, tsc) {
  const child = spawn(tsc, ['-p', 'tsconfig.build.json', '--watch', '--preserveWatchOutput'], { cwd: folder, stdio: 'inherit' });
  onStop(async () => void child.kill());
}

/**
 * Compilers write every file when they begin, the same as before; that is no change.
 *
 * @param {readonly string[]} folders
 * @returns {string} differs when what is to be run differs
 */
function printOf(folders) {
  const hash = createHash('sha256');
  for (const folder of folders) {
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.js'));
    for (const name of files.sort()) hash.update(name).update(readFileSync(join(folder, name)));
  }
  return hash.digest('hex');
}

/**
 * @param {string} web where the web app's own tools expect to be started
 * @param {import('../steps/open-database.mjs').OpenDatabase} database
 * @param {() => string} print of what the server is made of
 */
function restartable(web, database, print) {
  const program = fileURLToPath(new URL('./dev-server.mjs', import.meta.url));
  const env = { ...process.env, DEV_DATABASE: JSON.stringify(database) };
  const start = () => spawn(process.execPath, [program], { cwd: web, stdio: ['inherit', 'inherit', 'inherit', 'ipc'], env });
  let child = start();
  let made = print();
  /** @type {NodeJS.Timeout | undefined} */
  let soon;
  const end = async () => {
    if (child.exitCode !== null) return;
    child.kill();
    await new Promise((resolve) => child.once('exit', resolve));
  };
  onStop(end);

  const restart = async () => {
    const now = print();
    if (now === made) return;
    made = now;
    await end();
    if (!isBeingStopped()) child = start();
  };
  return {
    restartSoon() {
      clearTimeout(soon);
      soon = setTimeout(() => void restart(), QUIET_MILLISECONDS);
    },
  };
}
