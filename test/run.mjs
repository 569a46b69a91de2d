#!/usr/bin/env node
// `npm test` on a clone with nothing installed. The last line is "N passed, N failed".
import { fileURLToPath } from 'node:url';
import { ensureBuilt } from '../apps/start/steps/build.mjs';
import { ensureInstalled } from '../apps/start/steps/install.mjs';
import { refuseOldNode } from '../apps/start/steps/node-version.mjs';
import { ensureChromium } from './chromium/ensure-chromium.mjs';
import { LONG, USUAL } from './runner/parts.mjs';
import { runPart } from './runner/run-part.mjs';

const root = fileURLToPath(new URL('..', import.meta.url)).replace(/\/$/, '');
const say = (/** @type {string} */ words) => console.log(words);

/** @returns {Promise<NodeJS.ProcessEnv>} what the runners need to know */
async function prepare() {
  const tooOld = refuseOldNode(process.versions.node);
  if (tooOld !== undefined) throw new Error(tooOld);
  await ensureInstalled(root, say);
  const chromium = ensureChromium(say);
  await ensureBuilt(root, say);
  return { CHROMIUM_PATH: chromium, TURBO_TELEMETRY_DISABLED: '1', NEXT_TELEMETRY_DISABLED: '1' };
}

/** @typedef {import('./runner/count.mjs').Count} Count */

/**
 * @param {import('./runner/parts.mjs').Part} part
 * @param {import('./runner/run-part.mjs').Surroundings} surroundings
 * @returns {Promise<Count>}
 */
async function runAndSay(part, surroundings) {
  if (!surroundings.isOneOfMany) say(`\n== ${part.name}`);
  const count = await runPart(part, surroundings);
  say(`== ${part.name}: ${count.passed} passed, ${count.failed} failed`);
  return count;
}

/** @param {ReadonlyArray<readonly import('./runner/parts.mjs').Part[]>} steps */
async function runAll(steps) {
  const env = await prepare();
  /** @type {Count[]} */
  const counts = [];
  for (const parts of steps) {
    const isOneOfMany = parts.length > 1;
    if (isOneOfMany) say(`\n== ${parts.map(({ name }) => name).join(', ')}`);
    counts.push(...(await Promise.all(parts.map((part) => runAndSay(part, { root, env, isOneOfMany })))));
  }
  return counts.reduce((sum, { passed, failed }) => ({ passed: sum.passed + passed, failed: sum.failed + failed }));
}

const steps = process.argv.includes('--long') ? LONG : USUAL;
const { passed, failed } = await runAll(steps).catch((error) => {
  console.error(error instanceof Error && error.name === 'Error' ? error.message : error);
  return { passed: 0, failed: 1 };
});
say(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
