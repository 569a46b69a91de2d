import { spawnSync } from 'node:child_process';
import { findChromium, runs } from './find-chromium.mjs';
import { HEADLESS, unpackChromium } from './unpack-chromium.mjs';

/**
 * Ways to get one, best first. Each either leaves a Chromium behind or throws.
 * @type {ReadonlyArray<{ words: string, when: () => boolean, get: () => string | undefined }>}
 */
const WAYS = [
  { words: 'installing the system’s package', when: () => process.getuid?.() === 0, get: installPackage },
  { words: 'unpacking the system’s packages into your cache', when: () => process.platform === 'linux', get: unpackChromium },
  { words: 'letting Playwright fetch its own', when: () => true, get: fetchPlaywrights },
];

/**
 * @param {(words: string) => void} say
 * @returns {string} the path of a Chromium that runs
 * @throws Error that says what to do
 */
export function ensureChromium(say) {
  const found = findChromium();
  if (found !== undefined) return found;

  const failures = [];
  for (const { words, when, get } of WAYS) {
    if (!when()) continue;
    say(`No Chromium on this machine: ${words}.`);
    try {
      const path = get();
      if (path !== undefined && runs(path)) return path;
      failures.push(`${words}: it does not run`);
    } catch (error) {
      failures.push(`${words}: ${error instanceof Error ? error.message.split('\n')[0] : String(error)}`);
    }
  }
  throw new Error(
    'The end-to-end tests need Chromium and could not get one:\n' +
      failures.map((line) => `  ${line}\n`).join('') +
      `Install it (Debian: sudo apt-get install ${HEADLESS}; Ubuntu: sudo apt-get install chromium; macOS: brew install --cask chromium), ` +
      'or set CHROMIUM_PATH to the one you have. Then run npm test again.',
  );
}

/** @returns {string | undefined} */
function installPackage() {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const args of [['update'], ['install', '-y', '--no-install-recommends', HEADLESS]]) {
    const { status, stderr, error } = spawnSync('apt-get', args, { env, encoding: 'utf8' });
    if (status !== 0) throw new Error(`apt-get ${args[0]}: ${error?.message ?? stderr.trim()}`);
  }
  return findChromium();
}

/** @returns {string | undefined} */
function fetchPlaywrights() {
  const { status, stderr } = spawnSync('npx', ['playwright', 'install', 'chromium'], { encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr.trim());
  return findChromium();
}
