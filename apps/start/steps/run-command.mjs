import { spawn } from 'node:child_process';

/**
 * Runs a program and waits. Its words are shown only when it fails, so that a
 * start that goes well says little.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @param {{ cwd: string, env?: NodeJS.ProcessEnv, show?: boolean }} options
 * @returns {Promise<void>}
 * @throws Error with everything that the program said
 */
export function runCommand(command, args, { cwd, env = {}, show = false }) {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, {
      cwd,
      env: { ...process.env, ...env },
      stdio: show ? 'inherit' : ['ignore', 'pipe', 'pipe'],
    });
    let words = '';
    for (const stream of [child.stdout, child.stderr]) stream?.on('data', (part) => (words += part));
    child.once('error', reject);
    child.once('close', (status) => {
      if (status === 0) return resolve();
      reject(new Error(`"${command} ${args.join(' ')}" failed${show ? '' : ` and said:\n${words.trim()}`}`));
    });
  });
}
