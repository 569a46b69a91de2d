import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { demoOf, ended, launch, type Product } from '../../e2e/product/launch.ts';
import type { Demo } from '../../e2e/product/people.ts';

const ROOT = join(import.meta.dirname, '../../..');

/** One product with data of its own, which is stopped, killed and started again. */
export class House {
  #running: Product | undefined;

  /** @param url that people type, if it is another one than the product's own */
  constructor(readonly dataDir: string, readonly port: number, readonly url = `http://localhost:${port}`) {}

  async starts(): Promise<Demo> {
    this.#running = await launch({ settings: { DATA_DIR: this.dataDir, PORT: String(this.port), BASE_URL: this.url }, until: 'owner@' });
    return demoOf(this.#running.said);
  }

  async stops(): Promise<void> {
    if (this.#running) await ended(this.#running);
    this.#running = undefined;
  }

  /** Nobody is told, nothing is finished. Its database goes on without it. */
  async dies(): Promise<void> {
    if (this.#running) await ended(this.#running, 'SIGKILL');
    this.#running = undefined;
  }

  /** What a coordinator who looks after the machine would run, once it is stopped. */
  verified(): { readonly status: number | null; readonly words: string } {
    const { status, stdout, stderr } = spawnSync('npm', ['run', '--silent', 'verify'], { cwd: ROOT, encoding: 'utf8', env: { ...process.env, DATA_DIR: this.dataDir, NODE_ENV: 'production' } });
    return { status, words: stdout + stderr };
  }

  /** All that it holds, in another folder. It is stopped. */
  copiedTo(folder: string): void {
    const { status, stderr } = spawnSync('cp', ['-a', this.dataDir, folder], { encoding: 'utf8' });
    if (status !== 0) throw new Error(`the data were not copied: ${stderr}`);
  }
}
