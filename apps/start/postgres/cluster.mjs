// PostgreSQL's data: made once, checked before every start.
import { spawnSync } from 'node:child_process';
import { chownSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** @typedef {import('./server-user.mjs').ServerUser} ServerUser */

/**
 * Makes the cluster unless it exists. A first start that was cut short leaves
 * nothing that looks finished: the cluster gets its name when it is whole.
 *
 * @param {object} options
 * @param {string} options.home
 * @param {{ bin: string, major: number }} options.programs
 * @param {ServerUser | undefined} options.user
 * @param {import('./logins.mjs').Login} options.superuser
 * @param {boolean} options.durable false only for data that nobody will miss
 * @returns {string} the cluster's folder
 */
export function ensureCluster({ home, programs, user, superuser, durable }) {
  const cluster = join(home, 'cluster');
  if (existsSync(join(cluster, 'PG_VERSION'))) {
    refuseOtherMajor(cluster, programs.major);
    return cluster;
  }
  const half = join(home, 'cluster.half');
  const password = join(home, 'cluster.password');
  rmSync(half, { recursive: true, force: true });
  mkdirSync(half, { mode: 0o700 });
  writeFileSync(password, superuser.password, { mode: 0o600 });
  if (user) for (const path of [half, password]) chownSync(path, user.uid, user.gid);

  try {
    initdb({ bin: programs.bin, half, password, user, name: superuser.name, durable });
  } finally {
    rmSync(password, { force: true });
  }
  renameSync(half, cluster);
  return cluster;
}

/**
 * Text sorts by PostgreSQL's own rules and not by the machine's C library, so
 * that an index stays true when the machine below it is upgraded.
 *
 * @param {{ bin: string, half: string, password: string, user: ServerUser | undefined, name: string, durable: boolean }} options
 */
function initdb({ bin, half, password, user, name, durable }) {
  const options = [
    ...['--pgdata', half, '--username', name, '--pwfile', password, '--auth', 'scram-sha-256'],
    ...['--encoding', 'UTF8', '--locale', 'C', '--locale-provider', 'builtin', '--builtin-locale', 'C.UTF-8'],
    ...['--no-instructions', ...(durable ? [] : ['--no-sync'])],
  ];
  const { status, stderr, error } = spawnSync(join(bin, 'initdb'), options, {
    ...user,
    cwd: '/',
    env: { PATH: process.env['PATH'] ?? '', LC_ALL: 'C', TZ: 'UTC' },
    encoding: 'utf8',
  });
  if (status !== 0) {
    throw new Error(`PostgreSQL could not make its data folder ${half}:\n${error?.message ?? stderr.trim()}`);
  }
}

/**
 * @param {string} cluster
 * @param {number} major
 */
function refuseOtherMajor(cluster, major) {
  const found = Number(readFileSync(join(cluster, 'PG_VERSION'), 'utf8'));
  if (found === major) return;
  throw new Error(
    `The data in ${cluster} were written by PostgreSQL ${found}, and this is PostgreSQL ${major}. ` +
      `Nothing was changed. Export with the version that wrote them, then import here.`,
  );
}
