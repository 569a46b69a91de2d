import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { runCommand } from './run-command.mjs';

/** @typedef {{ version?: string, link?: boolean, optional?: boolean, devOptional?: boolean, dev?: boolean, peer?: boolean }} Locked */

/**
 * Installs what the lock file names, unless it is there.
 *
 * @param {string} root the clone
 * @param {(words: string) => void} say
 */
export async function ensureInstalled(root, say) {
  const lacking = findLacking(root);
  if (lacking === undefined) return;
  say(lacking === '' ? 'Installing what Sprigline stands on (once, some minutes).' : 'Installing again: the list of what Sprigline stands on has changed.');
  // Scripts of packages stay off: none is needed, and some download what cannot be had everywhere.
  await runCommand('npm', ['ci', '--ignore-scripts', '--no-audit', '--no-fund'], { cwd: root, env: { NODE_ENV: 'development' } });
}

/**
 * Versions are compared, not dates: a date says nothing after a copy or a checkout.
 *
 * @param {string} root
 * @returns {string | undefined} the first package that is missing or another version, '' when nothing is installed
 */
export function findLacking(root) {
  const installedFile = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(installedFile)) return '';

  const wanted = packagesIn(join(root, 'package-lock.json'));
  const installed = packagesIn(installedFile);
  // An image without the tools of development is complete without them.
  const isTrimmed = !Object.values(installed).some(({ dev }) => dev === true);
  const lacking = Object.entries(wanted).find(
    ([path, { version, link, optional, devOptional, dev, peer }]) =>
      path.includes('node_modules/') &&
      !link &&
      !(optional || devOptional || peer) &&
      !(dev && isTrimmed) &&
      installed[path]?.version !== version,
  );
  return lacking?.[0];
}

/**
 * @param {string} file
 * @returns {Record<string, Locked>}
 */
function packagesIn(file) {
  return JSON.parse(readFileSync(file, 'utf8')).packages;
}
