// Debian's Chromium for somebody who may not install packages: downloaded and unpacked, not installed.
import { spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';

/** The package and its program: a Chromium without a window of its own, which leaves the tests more of the machine. */
export const HEADLESS = 'chromium-headless-shell';

const FOLDER = join(process.env['XDG_CACHE_HOME'] ?? join(homedir(), '.cache'), 'sprigline', HEADLESS);
const PROGRAM = join(FOLDER, HEADLESS);

/** @returns {string | undefined} the one that was unpacked before */
export const unpackedChromium = () => (existsSync(PROGRAM) ? PROGRAM : undefined);

/**
 * @returns {string} where it is now
 * @throws Error when this system has no apt, or the packages cannot be had
 */
export function unpackChromium() {
  const packages = join(FOLDER, 'packages');
  rmSync(FOLDER, { recursive: true, force: true });
  for (const folder of [packages, join(FOLDER, 'lists', 'partial'), join(FOLDER, 'archives', 'partial')]) {
    mkdirSync(folder, { recursive: true });
  }
  // Lists of our own: those of the system may be empty, and only root may fill them.
  const own = ['-o', `Dir::State::lists=${join(FOLDER, 'lists')}`, '-o', `Dir::Cache=${FOLDER}`];
  run('apt-get', [...own, 'update'], FOLDER);
  run('apt-get', [...own, 'download', ...missingPackages(own)], packages);
  for (const name of readdirSync(packages)) run('dpkg', ['-x', join(packages, name), join(FOLDER, 'root')], packages);
  for (const name of readdirSync(FOLDER)) if (name !== 'root') rmSync(join(FOLDER, name), { recursive: true });

  writeStarter();
  return PROGRAM;
}

/**
 * What apt would install, told without installing: nothing that the system has is fetched again.
 * @param {readonly string[]} own
 * @returns {string[]}
 */
function missingPackages(own) {
  const plan = run('apt-get', [...own, '--simulate', '--no-install-recommends', 'install', HEADLESS], FOLDER);
  return [...plan.matchAll(/^Inst (\S+)/gm)].map(([, name]) => String(name));
}

/** Debian's own starter looks in /usr; this one looks where things were unpacked. */
function writeStarter() {
  const root = join(FOLDER, 'root');
  const libraries = readdirSync(join(root, 'usr', 'lib'))
    .filter((name) => name.includes('linux-gnu'))
    // The sound library keeps a part of itself in a folder beneath, and looks for it in /usr.
    .flatMap((name) => [join(root, 'usr', 'lib', name), join(root, 'usr', 'lib', name, 'pulseaudio'), join(root, 'lib', name)]);
  const fonts = existsSync('/etc/fonts/fonts.conf') ? '' : `export FONTCONFIG_PATH="${join(root, 'etc', 'fonts')}"\n`;
  writeFileSync(
    PROGRAM,
    `#!/bin/sh\nexport LD_LIBRARY_PATH="${libraries.join(':')}"\n${fonts}exec "${join(root, 'usr', 'lib', 'chromium', HEADLESS)}" "$@"\n`,
  );
  chmodSync(PROGRAM, 0o755);
}

/**
 * @param {string} command
 * @param {readonly string[]} args
 * @param {string} cwd
 */
function run(command, args, cwd) {
  const { status, stdout, stderr, error } = spawnSync(command, args, { cwd, encoding: 'utf8', maxBuffer: 1e8 });
  if (status !== 0) throw new Error(`${command} ${args.at(-1)}: ${error?.message ?? stderr.trim()}`);
  return stdout;
}
