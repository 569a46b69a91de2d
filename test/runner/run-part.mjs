import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { withCrash } from './count.mjs';

/**
 * @typedef {object} Surroundings
 * @property {string} root the clone
 * @property {NodeJS.ProcessEnv} env
 * @property {boolean} [isOneOfMany] what it says is kept until it has ended, so that no two speak at once
 */

/**
 * @param {import('./parts.mjs').Part} part
 * @param {Surroundings} surroundings
 * @returns {Promise<import('./count.mjs').Count>}
 */
export async function runPart({ name, command, args, env: own, count }, { root, env, isOneOfMany = false }) {
  const folder = mkdtempSync(join(tmpdir(), 'sprigline-report-'));
  const report = join(folder, 'report.json');
  const isVitest = args[0] === 'vitest';
  try {
    const status = await run(command, isVitest ? [...args, `--outputFile.json=${report}`] : args, {
      cwd: root,
      env: { ...process.env, ...env, ...own, PLAYWRIGHT_JSON_OUTPUT_NAME: report },
      stdio: isOneOfMany ? 'pipe' : 'inherit',
    });
    if (!count) return status === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
    return withCrash(status, existsSync(report) ? count(JSON.parse(readFileSync(report, 'utf8'))) : undefined);
  } catch (error) {
    console.error(`${name} could not be run:`, error);
    return { passed: 0, failed: 1 };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * @param {string} command
 * @param {readonly string[]} args
 * @param {{ cwd: string, env: NodeJS.ProcessEnv, stdio: 'pipe' | 'inherit' }} options
 * @returns {Promise<number | null>}
 */
function run(command, args, options) {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, options);
    /** @type {Buffer[]} */
    const said = [];
    for (const stream of [child.stdout, child.stderr]) stream?.on('data', (/** @type {Buffer} */ chunk) => said.push(chunk));
    child.once('error', reject);
    child.once('close', (status) => {
      process.stdout.write(Buffer.concat(said));
      resolve(status);
    });
  });
}
