import { spawnSync } from 'node:child_process';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Clone, type Started, type Worker } from '../support/clone.ts';

const isRoot = process.getuid?.() === 0;
const PORT = 4120;

/** Root tries it as root and as somebody who is not; anybody else as themselves. */
const WORKERS: ReadonlyArray<readonly [string, Worker | undefined]> = isRoot
  ? [
      ['root', undefined],
      ['an ordinary user', idsOf('nobody')],
    ]
  : [['an ordinary user', undefined]];

describe.each(WORKERS)('a clone under a folder of mode 700, started by %s', (_, worker) => {
  let clone: Clone;
  let running: Started;
  const start = (): Promise<Started> => clone.start({ PORT: String(PORT) });
  const answers = async (): Promise<number> => {
    const answer = await fetch(`http://127.0.0.1:${PORT}/sign-in`);
    await answer.text();
    return answer.status;
  };

  beforeAll(() => void (clone = new Clone(worker)));
  afterAll(async () => {
    await running.kill('SIGTERM');
    clone.remove();
  });

  test('serves', async () => {
    running = await start();

    expect(running.words).toContain(`Sprigline is at http://localhost:${PORT}`);
    expect(await answers()).toBe(200);
  });

  test('a second start on the same port is refused with a way out, and the first goes on', async () => {
    const second = await start();

    expect(await second.ended).toBe(1);
    expect(second.words).toContain(`Port ${PORT} is taken by another program.`);
    expect(await answers()).toBe(200);
  });

  test('a second start on the same data is refused, and the first goes on', async () => {
    const second = await clone.start({ PORT: String(PORT + 1) });

    expect(await second.ended).toBe(1);
    expect(second.words).toContain('running already on the data');
    expect(await answers()).toBe(200);
  });

  test('stops in order, the database too, and starts again on the same data', async () => {
    const database = clone.databaseProcess();

    expect(await running.kill('SIGINT')).toBe(0);
    expect(() => process.kill(database, 0)).toThrow('ESRCH');
    running = await start();
    expect(running.words).not.toContain('brought up to');
    expect(await answers()).toBe(200);
  });

  test('somebody who never reads the answer to the end does not keep it from stopping', async () => {
    const slow = await fetch(`http://127.0.0.1:${PORT}/sign-in`);
    const begin = performance.now();

    expect(await running.kill('SIGTERM')).toBe(0);
    expect(performance.now() - begin).toBeLessThan(60_000);
    await slow.body?.cancel().catch(() => undefined);
    running = await start();
  });

  test('starts again after it was killed', async () => {
    await running.kill('SIGKILL');
    running = await start();

    expect(await answers()).toBe(200);
  });

  test('says so and ends when the database is killed, and starts again', async () => {
    process.kill(clone.databaseProcess(), 'SIGKILL');

    expect(await running.ended).toBe(1);
    expect(running.words).toContain('The database has stopped by itself');
    running = await start();
    expect(await answers()).toBe(200);
  });
});

function idsOf(name: string): Worker {
  const [uid, gid] = ['-u', '-g'].map((part) => Number(spawnSync('id', [part, name], { encoding: 'utf8' }).stdout));
  return { uid: uid!, gid: gid! };
}
