import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { chmodSync, cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url)).replace(/\/$/, '');

/** Who works in the clone; nothing means whoever runs the tests. */
export interface Worker {
  readonly uid: number;
  readonly gid: number;
}

/** A copy of the built repository, in a folder that nobody else may enter. */
export class Clone {
  readonly folder: string;
  readonly #closed: string;
  readonly #worker: Worker | undefined;

  constructor(worker?: Worker) {
    this.#worker = worker;
    this.#closed = mkdtempSync(join(tmpdir(), 'clone-'));
    this.folder = join(this.#closed, 'sprigline');
    cpSync(ROOT, this.folder, {
      recursive: true,
      verbatimSymlinks: true,
      filter: (path) => !/\/(\.data|\.git|test-results|playwright-report)$/.test(path),
    });
    chmodSync(this.#closed, 0o700);
    if (worker) spawnSync('chown', ['-R', `${worker.uid}:${worker.gid}`, this.#closed]);
  }

  /** Starts the service and waits until it says where it is, or ends. */
  async start(settings: Readonly<Record<string, string>>): Promise<Started> {
    const child = spawn(process.execPath, ['apps/start/start.mjs'], {
      ...this.#worker,
      cwd: this.folder,
      env: { PATH: process.env['PATH'], HOME: this.#closed, ...settings },
    });
    const started = new Started(child);
    await started.settled;
    return started;
  }

  /** The number of the database server's own process. */
  databaseProcess(): number {
    return Number.parseInt(readFileSync(join(this.home(), 'cluster', 'postmaster.pid'), 'utf8'), 10);
  }

  /** Where the data are: in the clone, or where it remembers. */
  home(): string {
    const place = join(this.folder, '.data', 'place');
    return existsSync(place) ? String(readFileSync(place, 'utf8').split('\n')[0]) : join(this.folder, '.data');
  }

  remove(): void {
    for (const folder of [this.home(), this.#closed]) rmSync(folder, { recursive: true, force: true });
  }
}

/** One run of the launcher. */
export class Started {
  words = '';
  readonly ended: Promise<number | null>;
  readonly settled: Promise<unknown>;
  readonly #child: ChildProcess;

  constructor(child: ChildProcess) {
    this.#child = child;
    this.ended = new Promise((resolve) => child.once('exit', resolve));
    const isUp = new Promise<void>((resolve) => {
      for (const stream of [child.stdout, child.stderr]) {
        stream?.on('data', (part) => {
          this.words += String(part);
          if (this.words.includes('Sprigline is at')) resolve();
        });
      }
    });
    this.settled = Promise.race([isUp, this.ended]);
  }

  kill(signal: NodeJS.Signals): Promise<number | null> {
    this.#child.kill(signal);
    return this.ended;
  }
}
