import { spawn, type ChildProcess } from 'node:child_process';
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FullConfig } from '@playwright/test';
import { type Demo, PEOPLE } from './people.ts';

/** First start of a data folder: the database is made, migrated, and the demo loaded. */
const PATIENCE_MS = 240_000;

const root = join(import.meta.dirname, '../../..');

interface Product {
  readonly child: ChildProcess;
  /** What the terminal said until the product was ready. */
  readonly said: string;
}

/**
 * Starts the products as their users would, each with data of its own: one with the demo for each lane
 * of journeys, and an empty one. Tells the journeys where they are and how to sign in.
 *
 * @returns how to stop them
 */
export default async function startProduct({ workers }: FullConfig): Promise<() => Promise<void>> {
  const folder = mkdtempSync(join(tmpdir(), 'sprigline-e2e-'));
  // As root, PostgreSQL runs as somebody else, who has to get in.
  chmodSync(folder, 0o755);
  // The first one builds what has changed; only then the others come.
  const first = await start([], join(folder, 'demo-0'), 'owner@');
  const [empty, ...others] = await Promise.all([
    start(['--', '--empty'], join(folder, 'empty'), '/set-up/'),
    ...Array.from({ length: workers - 1 }, (_, lane) => start([], join(folder, `demo-${lane + 1}`), 'owner@')),
  ]);

  process.env['E2E_DEMOS'] = JSON.stringify([first, ...others].map(({ said }) => demoOf(said)));
  process.env['E2E_SETUP_LINK'] = /http\S+\/set-up\/\S+/.exec(empty.said)?.[0] ?? '';

  return async () => {
    await Promise.all([first, ...others, empty].map(({ child }) => stopped(child)));
    rmSync(folder, { recursive: true, force: true });
  };
}

const demoOf = (said: string): Demo => ({
  url: addressIn(said),
  passwords: Object.fromEntries(PEOPLE.map((who) => [who, wordAfter(`${who}@harrowdale.example`, said)])),
});

async function start(flags: readonly string[], dataDir: string, until: string): Promise<Product> {
  const child = spawn('npm', ['start', '--silent', ...flags], {
    cwd: root, detached: true, stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, PORT: String(await freePort()), DATA_DIR: dataDir, NODE_ENV: 'production' },
  });
  let said = '';
  return new Promise((resolve, reject) => {
    const lost = (why: string) => reject(new Error(`the product did not start: ${why}\n${said}`));
    const timer = setTimeout(() => lost('no word in time'), PATIENCE_MS);
    const hear = (words: Buffer): void => {
      said += words.toString();
      // The whole line, not its beginning.
      if (!said.slice(said.indexOf(until)).includes('\n') || !said.includes(until)) return;
      clearTimeout(timer);
      resolve({ child, said });
    };
    child.stdout?.on('data', hear);
    child.stderr?.on('data', hear);
    child.once('exit', (code) => lost(`it ended with ${code}`));
  });
}

/** npm stands between us and the launcher, so the whole group is told. */
function stopped(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    child.removeAllListeners('exit').once('exit', () => resolve());
    if (child.pid) process.kill(-child.pid, 'SIGTERM');
  });
}

const addressIn = (said: string): string => /Sprigline is at (\S+)/.exec(said)?.[1] ?? '';

const wordAfter = (word: string, said: string): string => new RegExp(`${word.replace('.', '\\.')}\\s+(\\S+)`).exec(said)?.[1] ?? '';

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer().once('error', reject).listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}
