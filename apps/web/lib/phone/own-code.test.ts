import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { dropCode, isCode, peopleWithCodes, setCode, tryCode, WAIT_MS } from './own-code.ts';
import { openStore } from './store.ts';

let nth = 0;
const fresh = () => openStore(`codes-${++nth}`);
const NOW = Date.UTC(2026, 2, 1, 10);

test.each([['1234', true], ['12345678', true], ['123', false], ['123456789', false], ['12a4', false], ['', false], ['١٢٣٤', false]])('%s may be a code: %s', (text, is) => {
  expect(isCode(text)).toBe(is);
});

test('lets in by the right code only, each person by their own, and keeps none of them readable', async () => {
  const store = await fresh();
  await setCode(store, 'ann', '2580', 1_000);
  await setCode(store, 'ben', '2580', 1_000);
  expect(await tryCode(store, 'ann', '2580', NOW)).toEqual({ is: 'right' });
  expect(await tryCode(store, 'ann', '0852', NOW)).toEqual({ is: 'wrong', left: 4 });
  expect(await tryCode(store, 'nobody', '', NOW)).toEqual({ is: 'right' });
  const [ann, ben] = (await store.getAll('settings')) as { hash: Uint8Array }[];
  expect(ann?.hash).not.toEqual(ben?.hash);
  expect(JSON.stringify([ann, ben])).not.toContain('2580');

  expect([...(await peopleWithCodes(store))].toSorted()).toEqual(['ann', 'ben']);
  await dropCode(store, 'ann');
  expect(await tryCode(store, 'ann', '', NOW)).toEqual({ is: 'right' });
});

test('after five wrong ones a minute passes before even the right one is tried, and a clock set back adds nothing', async () => {
  const store = await fresh();
  await setCode(store, 'ann', '2580', 1_000);
  const lefts = [];
  for (let turn = 0; turn < 5; turn += 1) lefts.push(await tryCode(store, 'ann', '1111', NOW));
  expect(lefts).toEqual([4, 3, 2, 1].map((left) => ({ is: 'wrong', left })).concat([{ is: 'wait', seconds: 60 } as never]));
  expect(await tryCode(store, 'ann', '2580', NOW + WAIT_MS - 1)).toEqual({ is: 'wait', seconds: 1 });
  expect(await tryCode(store, 'ann', '2580', NOW - 86_400_000)).toEqual({ is: 'wait', seconds: 60 });
  expect(await tryCode(store, 'ann', '2580', NOW + WAIT_MS)).toEqual({ is: 'right' });
});

test('a code is hashed with 600,000 rounds', async () => {
  const store = await fresh();
  await setCode(store, 'ann', '2580');
  expect(((await store.getAll('settings')) as { rounds: number }[])[0]?.rounds).toBe(600_000);
});
