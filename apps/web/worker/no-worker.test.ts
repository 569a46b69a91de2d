import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import vm from 'node:vm';
import { expect, test } from 'vitest';

/** Runs the worker as a browser would, and says what it did. */
async function lived(): Promise<string[]> {
  const done: string[] = [];
  const listeners = new Map<string, (event: { waitUntil: (work: Promise<unknown>) => void }) => void>();
  const self = {
    addEventListener: (name: string, listen: (event: { waitUntil: (work: Promise<unknown>) => void }) => void) => listeners.set(name, listen),
    skipWaiting: () => done.push('takes over'),
    registration: { unregister: () => Promise.resolve(done.push('goes')) },
  };
  const caches = { keys: () => Promise.resolve(['sprigline-old', 'another', 'sprigline-new']), delete: (name: string) => Promise.resolve(done.push(`forgets ${name}`)) };
  // No indexedDB: a worker that touched it would fail here.
  vm.runInNewContext(readFileSync(join(import.meta.dirname, '../public/no-worker.js'), 'utf8'), { self, caches });
  for (const name of ['install', 'activate']) {
    const work: Promise<unknown>[] = [];
    listeners.get(name)?.({ waitUntil: (one) => work.push(one) });
    await Promise.all(work);
  }
  expect([...listeners.keys()]).toEqual(['install', 'activate']);
  return done;
}

test('takes over at once, empties our caches and no others, and goes; what was logged is not touched', async () => {
  expect(await lived()).toEqual(['takes over', 'forgets sprigline-old', 'forgets sprigline-new', 'goes']);
});
