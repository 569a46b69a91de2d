// The server process itself: start, wait until it answers, stop.
import { spawn } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { processCommand, processStamp } from './process-stamp.mjs';

/** Long enough to recover a large database after a power cut. */
const START_SECONDS = 120;
const STOP_SECONDS = 30;

/**
 * @param {object} options
 * @param {string} options.bin
 * @param {string} options.cluster
 * @param {import('./server-user.mjs').ServerUser | undefined} options.user
 * @param {number} options.port
 * @param {number} options.log an open file
 * @param {Readonly<Record<string, string>>} options.settings
 * @returns {Promise<import('node:child_process').ChildProcess | undefined>} nothing when it ended before it answered
 */
export async function startPostmaster({ bin, cluster, user, port, log, settings }) {
  const all = { listen_addresses: '127.0.0.1', port: String(port), unix_socket_directories: '', ...settings };
  const options = Object.entries(all).flatMap(([name, value]) => ['-c', `${name}=${value}`]);
  // A group of its own: Ctrl-C in a terminal must reach the launcher only, which stops the API first.
  const child = spawn(join(bin, 'postgres'), ['-D', cluster, ...options], {
    ...user,
    cwd: '/',
    env: { PATH: process.env['PATH'] ?? '', LC_ALL: 'C', TZ: 'UTC' },
    stdio: ['ignore', log, log],
    detached: true,
  });
  /** @type {Error | undefined} */
  let failure;
  child.once('error', (error) => (failure = error));

  for (const end = Date.now() + START_SECONDS * 1000; Date.now() < end; await sleep(25)) {
    if (failure) throw failure;
    if (child.exitCode !== null || child.signalCode !== null) return undefined;
    if (isReady(cluster, child.pid)) return child;
  }
  child.kill('SIGQUIT');
  throw new Error(`PostgreSQL did not become ready within ${START_SECONDS} seconds.`);
}

/**
 * Ends the sessions and stops; nothing that was acknowledged is lost.
 *
 * @param {number} pid
 */
export async function stopPostmaster(pid) {
  for (const signal of /** @type {const} */ (['SIGINT', 'SIGQUIT'])) {
    try {
      process.kill(pid, signal);
    } catch {
      return;
    }
    for (const end = Date.now() + STOP_SECONDS * 1000; Date.now() < end; await sleep(25)) {
      if (processStamp(pid) === undefined) return;
    }
  }
  throw new Error(`PostgreSQL (process ${pid}) does not stop.`);
}

/**
 * After a launcher was killed, its server may still run, or may have left a
 * number behind that belongs to some other program by now, or to a dead process
 * that nobody has buried. PostgreSQL takes both for a living server, so the file
 * goes; it still looks itself whether its shared memory is in use.
 *
 * @param {string} cluster
 */
export async function clearLeftBehind(cluster) {
  const file = join(cluster, 'postmaster.pid');
  if (!existsSync(file)) return;

  const pid = Number.parseInt(readFileSync(file, 'utf8'), 10);
  if (processStamp(pid) !== undefined && processCommand(pid).includes(cluster)) await stopPostmaster(pid);
  rmSync(file, { force: true });
}

/**
 * The eighth line of postmaster.pid says so; pg_ctl reads it there too.
 * @param {string} cluster
 * @param {number | undefined} pid
 */
function isReady(cluster, pid) {
  try {
    const lines = readFileSync(join(cluster, 'postmaster.pid'), 'utf8').split('\n');
    return Number(lines[0]) === pid && lines[7]?.trim() === 'ready';
  } catch {
    return false;
  }
}
