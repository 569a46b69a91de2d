import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, join } from 'node:path';
import { HEADLESS, unpackedChromium } from './unpack-chromium.mjs';

const NAMES = [HEADLESS, 'chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
const ELSEWHERE = ['/Applications/Google Chrome.app/Contents/MacOS/Google Chrome', '/Applications/Chromium.app/Contents/MacOS/Chromium'];

/**
 * A Chromium that is on this machine already and runs.
 *
 * @param {Readonly<Record<string, string | undefined>>} [environment]
 * @returns {string | undefined} its path
 */
export function findChromium(environment = process.env) {
  const folders = (environment['PATH'] ?? '').split(delimiter);
  const candidates = [
    environment['CHROMIUM_PATH'],
    ...NAMES.flatMap((name) => folders.map((folder) => join(folder, name))),
    ...ELSEWHERE,
    playwrightsOwn(),
    unpackedChromium(),
  ];
  return candidates.find((path) => path !== undefined && existsSync(path) && runs(path));
}

/**
 * Being there isn't enough: some systems put a mere pointer to a shop there, and libraries may be missing.
 * @param {string} path
 */
export function runs(path) {
  const { status, stdout } = spawnSync(path, ['--version'], { encoding: 'utf8', timeout: 30_000 });
  return status === 0 && /chrom/i.test(stdout);
}

/** @returns {string | undefined} where Playwright keeps the one that it fetches */
function playwrightsOwn() {
  try {
    return createRequire(import.meta.url)('@playwright/test').chromium.executablePath();
  } catch {
    return undefined;
  }
}
