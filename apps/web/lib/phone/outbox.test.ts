import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { sendOnceMore } from './decide.ts';
import { keep, letOut, markRefused, markSent, sentLately, takeBack, unsent } from './outbox.ts';
import { openStore } from './store.ts';
import { counted } from '../../../../test/support/counted-on-a-phone.ts';

let nth = 0;
const fresh = () => openStore(`outbox-${++nth}`);
const NOW = Date.UTC(2026, 2, 1, 10);
const idsIn = (items: readonly { id: string }[]): string[] => items.map(({ id }) => id);

test('what was logged stays in the order in which it was, through closing and opening again', async () => {
  const store = await fresh();
  await keep(store, [counted('one'), counted('two')], NOW);
  await keep(store, [counted('three')], NOW + 1);
  store.close();
  expect(idsIn(await unsent(await openStore(`outbox-${nth}`)))).toEqual(['one', 'two', 'three']);
});

test('what has not gone out is changed in its place, and can be taken back', async () => {
  const store = await fresh();
  await keep(store, [counted('one'), counted('two')], NOW);
  expect(await keep(store, [counted('one', 7)], NOW + 1)).toEqual([]);
  expect((await unsent(store)).map(({ id, work }) => [id, work.kind === 'entry' && work.entry.saying])).toMatchObject([['one', { alive: 7 }], ['two', {}]]);
  expect(await takeBack(store, ['one'])).toEqual([]);
  expect(idsIn(await unsent(store))).toEqual(['two']);
});

test('what may be at the server is neither changed nor taken back, and nothing else of the act is kept either', async () => {
  const store = await fresh();
  await keep(store, [counted('one')], NOW);
  const [item] = await unsent(store);
  const out = await letOut(store, [item?.at ?? 0]);
  expect(await keep(store, [counted('one', 7), counted('two')], NOW)).toEqual(['one']);
  expect(await takeBack(store, ['one'])).toEqual(['one']);
  expect(await unsent(store)).toMatchObject([{ id: 'one', isOut: true }]);

  await markSent(store, out.map((one) => ({ item: one, status: 'written' as const, flags: [] })), NOW + 5);
  expect(await unsent(store)).toEqual([]);
  expect(await sentLately(store)).toMatchObject([{ id: 'one', status: 'written', sentAt: NOW + 5 }]);
  expect(await keep(store, [counted('one', 7)], NOW)).toEqual(['one']);
  expect(await takeBack(store, ['one'])).toEqual(['one']);
});

test('what the server refused stays with its reason, and may be changed, since the server has nothing of it', async () => {
  const store = await fresh();
  await keep(store, [counted('one')], NOW);
  const [item] = await letOut(store, (await unsent(store)).map(({ at }) => at));
  await markRefused(store, [{ at: item?.at ?? 0, refusal: { type: '/problems/x', title: 'No', status: 422 } }]);
  expect(await unsent(store)).toMatchObject([{ id: 'one', refusal: { title: 'No' } }]);
  await sendOnceMore(store, item?.at ?? 0);
  expect((await unsent(store))[0]?.refusal).toBeUndefined();
  await markRefused(store, [{ at: item?.at ?? 0, refusal: { type: '/problems/x', title: 'No', status: 422 } }]);
  expect(await keep(store, [counted('one', 7)], NOW)).toEqual([]);
  expect((await unsent(store))[0]).toMatchObject({ at: item?.at, keptAt: NOW });
});

test('what was sent is forgotten after two weeks', async () => {
  const store = await fresh();
  const send = async (id: string, at: number) => {
    await keep(store, [counted(id)], at);
    const items = await letOut(store, (await unsent(store)).map((one) => one.at));
    await markSent(store, items.map((item) => ({ item, status: 'written' as const, flags: [] })), at);
  };
  await send('old', NOW);
  await send('new', NOW + 15 * 24 * 60 * 60 * 1000);
  expect(idsIn(await sentLately(store))).toEqual(['new']);
});
