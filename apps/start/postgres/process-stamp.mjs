// Telling a process from a later one that was given the same number.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';

/**
 * A word that stays with a process for life: when it started.
 *
 * @param {number} pid
 * @returns {string | undefined} nothing when there is no such process
 */
export function processStamp(pid) {
  if (!existsSync('/proc/self/stat')) return ask(pid, 'lstart=');
  try {
    // The name of the program stands in brackets and may hold blanks; the start is the 20th field after it.
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    const [state, ...fields] = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    return state === 'Z' ? undefined : fields[18];
  } catch {
    return undefined;
  }
}

/**
 * @param {number} pid
 * @returns {string} the command line, or nothing
 */
export function processCommand(pid) {
  if (!existsSync('/proc/self/cmdline')) return ask(pid, 'command=') ?? '';
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8').replaceAll('\0', ' ');
  } catch {
    return '';
  }
}

/**
 * @param {number} pid
 * @param {string} column
 */
function ask(pid, column) {
  return spawnSync('ps', ['-o', column, '-p', String(pid)], { encoding: 'utf8' }).stdout?.trim() || undefined;
}
