import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { runCommand } from './run-command.mjs';

/** What must be there to serve. */
const BUILT = ['apps/api/dist/index.js', 'apps/web/.next/BUILD_ID'];

/**
 * Builds what has changed since the last build; turbo knows.
 *
 * @param {string} root the clone
 * @param {(words: string) => void} say
 * @param {readonly string[]} [only] names of workspaces; all when left out
 */
export async function ensureBuilt(root, say, only = []) {
  const isBuilt = BUILT.every((file) => existsSync(join(root, file)));
  const turbo = join(root, 'node_modules', '.bin', 'turbo');
  // An image carries the build and not the tools.
  if (isBuilt && !existsSync(turbo)) return;

  if (!isBuilt) say('Building (once, a minute or two).');
  await runCommand(turbo, ['run', 'build', '--output-logs=errors-only', ...only.map((name) => `--filter=${name}`)], {
    cwd: root,
    env: { TURBO_TELEMETRY_DISABLED: '1', NEXT_TELEMETRY_DISABLED: '1', NODE_ENV: 'production' },
  });
}
