import { spawn } from 'node:child_process';
import { watch } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureBuilt } from '../steps/build.mjs';
import { openDatabase } from '../steps/open-database.mjs';
import { onStop } from '../steps/stopping.mjs';

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

  const server = restartable(join(root, 'apps', 'web'), database);
  for (const folder of COMPILED) watch(join(root, folder, 'dist'), { recursive: true }, server.restartSoon);
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
 * @param {string} web where the web app's own tools expect to be started
 * @param {import('../steps/open-database.mjs').OpenDatabase} database
 */
function restartable(web, database) {
  const program = fileURLToPath(new URL('./dev-server.mjs', import.meta.url));
  const env = { ...process.env, DEV_DATABASE: JSON.stringify(database) };
  const start = () => spawn(process.execPath, [program], { cwd: web, stdio: 'inherit', env });
  let child = start();
  /** @type {NodeJS.Timeout | undefined} */
  let soon;
  const end = async () => {
    if (child.exitCode !== null) return;
    child.kill();
    await new Promise((resolve) => child.once('exit', resolve));
  };
  onStop(end);
  return {
    restartSoon() {
      clearTimeout(soon);
      soon = setTimeout(() => void end().then(() => (child = start())), QUIET_MILLISECONDS);
    },
  };
}
