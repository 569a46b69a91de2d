import { spawn, type ChildProcess } from 'node:child_process';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { type Demo, PEOPLE } from './people.ts';

/** First start of a data folder: the database is made, migrated, and the demo loaded. */
const PATIENCE_MS = 240_000;

const root = join(import.meta.dirname, '../../..');

export interface Product {
  readonly child: ChildProcess;
  /** What the terminal said until the product was ready. */
  readonly said: string;
}

interface Launch {
  readonly flags?: readonly string[];
  /** Besides those that it would have anyway. */
  readonly settings: Readonly<Record<string, string>>;
  /** Words that it says last. */
  readonly until: string;
}

/** Runs the product as its users would, in a group of processes of its own, and waits until it says so. */
export async function launch({ flags = [], settings, until }: Launch): Promise<Product> {
  const port = settings['PORT'] ?? String(await freePort());
  const child = spawn('npm', ['start', '--silent', ...flags], {
    cwd: root, detached: true, stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, NODE_ENV: 'production', ...settings, PORT: port },
  });
  let said = '';
  return new Promise((resolve, reject) => {
    const lost = (why: string) => {
      void ended({ child });
      reject(new Error(`the product did not start: ${why}\n${said}`));
    };
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

/** Ends it, in order or at once. npm stands between us and the launcher, and goes first: the whole group is told, and waited for. */
export async function ended({ child: { pid } }: Pick<Product, 'child'>, signal: 'SIGTERM' | 'SIGKILL' = 'SIGTERM'): Promise<void> {
  if (pid === undefined) return;
  for (let tell: NodeJS.Signals | 0 = signal; isThere(-pid, tell); tell = 0) await sleep(50);
}

function isThere(group: number, signal: NodeJS.Signals | 0): boolean {
  try {
    return process.kill(group, signal);
  } catch {
    return false;
  }
}

export const demoOf = (said: string): Demo => ({
  url: /Sprigline is at (\S+)/.exec(said)?.[1] ?? '',
  passwords: Object.fromEntries(PEOPLE.map((who) => [who, wordAfter(`${who}@harrowdale.example`, said)])),
});

const wordAfter = (word: string, said: string): string => new RegExp(`${word.replace('.', '\\.')}\\s+(\\S+)`).exec(said)?.[1] ?? '';

export function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer().once('error', reject).listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}
