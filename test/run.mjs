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

/** @param {readonly import('./runner/parts.mjs').Part[]} parts */
async function runAll(parts) {
  const env = await prepare();
  const total = { passed: 0, failed: 0 };
  for (const part of parts) {
    say(`\n== ${part.name}`);
    const { passed, failed } = await runPart(part, { root, env });
    say(`== ${part.name}: ${passed} passed, ${failed} failed`);
    total.passed += passed;
    total.failed += failed;
  }
  return total;
}

const parts = process.argv.includes('--long') ? LONG : USUAL;
const { passed, failed } = await runAll(parts).catch((error) => {
  console.error(error instanceof Error && error.name === 'Error' ? error.message : error);
  return { passed: 0, failed: 1 };
});
say(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
