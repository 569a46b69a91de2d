// One launcher for each data folder at a time.
import { linkSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { processStamp } from './process-stamp.mjs';

/**
 * Marks the data folder as in use by this process. A mark left by a process that was killed is replaced.
 *
 * @param {string} home
 * @returns {() => void} takes the mark away again
 */
export function markRunning(home) {
  const mark = join(home, 'running.json');
  const mine = join(home, `running.${process.pid}`);
  writeFileSync(mine, JSON.stringify({ pid: process.pid, stamp: processStamp(process.pid) }));
  try {
    takeOver(mine, mark);
  } finally {
    rmSync(mine, { force: true });
  }
  return () => rmSync(mark, { force: true });
}

/**
 * @param {string} home
 * @returns {number | undefined} the process that uses this data folder now
 */
export function runningProcess(home) {
  try {
    const { pid, stamp } = JSON.parse(readFileSync(join(home, 'running.json'), 'utf8'));
    return stamp !== undefined && processStamp(pid) === stamp ? pid : undefined;
  } catch {
    return undefined;
  }
}

/**
 * A link either appears whole or not at all, so no reader ever sees half a mark.
 * @param {string} mine
 * @param {string} mark
 */
function takeOver(mine, mark) {
  const home = join(mark, '..');
  for (let attempt = 0; attempt < 2; attempt++) {
    try {
      return linkSync(mine, mark);
    } catch (error) {
      const pid = runningProcess(home);
      if (pid !== undefined) {
        throw new Error(`Sprigline is running already on the data in ${home} (process ${pid}). Stop that one first.`, {
          cause: error,
        });
      }
      if (attempt > 0) throw error;
      rmSync(mark, { force: true });
    }
  }
}
