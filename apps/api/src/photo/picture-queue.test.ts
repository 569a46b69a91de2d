import { expect, test } from 'vitest';
import { PictureQueue } from './picture-queue.ts';

function work() {
  let end: (how: 'well' | 'badly') => void = () => undefined;
  const done = new Promise<void>((resolve, reject) => {
    end = (how) => (how === 'well' ? resolve() : reject(new Error('broken')));
  });
  return { done, end };
}
const settled = () => new Promise((resolve) => setImmediate(resolve));

test('so many run at a time, the others in the order in which they came, also after one that broke', async () => {
  const queue = new PictureQueue(2, 10);
  const works = [work(), work(), work(), work()];
  const begun: number[] = [];
  const results = works.map(({ done }, at) => queue.run(() => { begun.push(at); return done; }).then(() => 'well', () => 'badly'));
  await settled();
  expect(begun).toEqual([0, 1]);

  works[1]?.end('badly');
  await settled();
  expect(begun).toEqual([0, 1, 2]);
  for (const { end } of works) end('well');
  expect(await Promise.all(results)).toEqual(['well', 'badly', 'well', 'well']);
  expect(begun).toEqual([0, 1, 2, 3]);
});

test('who finds the line full is sent away, and comes in again once it moved', async () => {
  const queue = new PictureQueue(1, 1);
  const [first, second] = [work(), work()];
  const runs = [first, second].map(({ done }) => queue.run(() => done));
  await expect(queue.run(() => Promise.resolve())).rejects.toMatchObject({ code: 'http/busy' });
  first.end('well');
  second.end('well');
  await Promise.all(runs);
  expect(await queue.run(() => Promise.resolve('kept'))).toBe('kept');
});
