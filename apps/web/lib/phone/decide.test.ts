import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { counted } from '../../../../test/support/counted-on-a-phone.ts';
import { decidedHere, give, putAside, sendOnceMore } from './decide.ts';
import { allHere, keep, letOut, markRefused, markSent, takeBack, unsent } from './outbox.ts';
import type { ToKeep } from './outbox-item.ts';
import { rescueFile, takeUp } from './rescue-file.ts';
import { openStore, type Store } from './store.ts';

const NOW = Date.UTC(2026, 2, 1, 10);
const REFUSAL = { type: '/problems/batch/label-taken', title: 'No', status: 409 };
let nth = 0;
const fresh = () => openStore(`decide-${++nth}`);
const note = (id: string): ToKeep => ({ ...counted(id), work: { kind: 'entry', entry: { id, observedOn: '2026-03-01', writtenAt: '2026-03-01T10:00:00Z', saying: { kind: 'noted', batchId: 'tray', text: 'Could not be booked', notBooked: { id: 'one' } } } } });

const withdrawal: ToKeep = { ...counted('back'), work: { kind: 'entry', entry: { id: 'back', observedOn: '2026-03-01', writtenAt: '2026-03-01T10:00:00Z', saying: { kind: 'withdrawn', entryId: 'note', sawVersion: 'note', reason: 'Told anew' } } } };

async function refused(store: Store, id = 'one'): Promise<number> {
  await keep(store, [counted(id)], NOW);
  const at = (await unsent(store)).find((item) => item.id === id)?.at ?? 0;
  await markRefused(store, [{ at, refusal: REFUSAL }]);
  return at;
}

test('what is given to a coordinator is a note on its way, and stays readable; given twice, it is given once', async () => {
  const store = await fresh();
  const at = await refused(store);
  await give(store, at, note('note'), withdrawal, NOW + 1);
  await give(store, at, note('another'), withdrawal, NOW + 2);
  expect((await unsent(store)).map(({ id }) => id)).toEqual(['note']);
  expect(await decidedHere(store)).toMatchObject([{ id: 'one', refusal: REFUSAL, decided: { how: 'given', at: NOW + 1, noteId: 'note' } }]);
});

test('a full phone gives nothing: the refused entry is as it was', async () => {
  const store = await fresh();
  const at = await refused(store);
  await expect(give(store, at, { ...note('one') }, withdrawal, NOW + 1)).rejects.toMatchObject({ name: expect.stringMatching(/Error$/) });
  expect(await unsent(store)).toMatchObject([{ id: 'one', refusal: REFUSAL }]);
  expect(await decidedHere(store)).toEqual([]);
});

test('what waits, or was taken, cannot be given away or put aside', async () => {
  const store = await fresh();
  await keep(store, [counted('one')], NOW);
  const [item] = await unsent(store);
  await give(store, item?.at ?? 0, note('note'), withdrawal, NOW + 1);
  await putAside(store, item?.at ?? 0, 'told twice', NOW + 1);
  expect(await unsent(store)).toMatchObject([{ id: 'one' }]);
  expect(await decidedHere(store)).toEqual([]);
});

test('what was put aside keeps its reason and can be sent after all; undoing does not reach it', async () => {
  const store = await fresh();
  const at = await refused(store);
  await putAside(store, at, 'told twice', NOW + 1);
  expect(await takeBack(store, ['one'])).toEqual([]);
  expect(await decidedHere(store)).toMatchObject([{ id: 'one', decided: { how: 'aside', reason: 'told twice' } }]);
  await sendOnceMore(store, at);
  expect(await decidedHere(store)).toEqual([]);
  expect((await unsent(store))[0]?.refusal).toBeUndefined();
});

test('what a coordinator has got is not sent after all', async () => {
  const store = await fresh();
  const at = await refused(store);
  await give(store, at, note('note'), withdrawal, NOW + 1);
  await sendOnceMore(store, at);
  expect((await unsent(store)).map(({ id }) => id)).toEqual(['note']);
});

describe('what a coordinator has got as a note', () => {
  const given = async (): Promise<Store> => {
    const store = await fresh();
    await give(store, await refused(store), note('note'), withdrawal, NOW);
    return store;
  };
  const sendNote = async (store: Store): Promise<void> => {
    const [item] = await letOut(store, (await unsent(store)).map(({ at }) => at));
    if (item) await markSent(store, [{ item, status: 'written', flags: [] }], NOW);
  };
  const waiting = async (store: Store) => (await unsent(store)).map(({ id }) => id);

  test('and is told anew before the note went out takes its place, and there is no note', async () => {
    const store = await given();
    expect(await keep(store, [counted('one', 7)], NOW + 1)).toEqual([]);
    expect(await waiting(store)).toEqual(['one']);
    expect(await decidedHere(store)).toEqual([]);
  });

  test.each([['on its way', (store: Store) => unsent(store).then((items) => letOut(store, items.map(({ at }) => at))), ['one', 'note', 'back']], ['at the server', sendNote, ['one', 'back']]] as const)('and is told anew with the note %s withdraws the note with it, once', async (_, send, left) => {
    const store = await given();
    await send(store);
    await keep(store, [counted('one', 7)], NOW + 5_000);
    await keep(store, [counted('one', 8)], NOW + 6_000);
    expect(await waiting(store)).toEqual(left);
    expect((await unsent(store)).find(({ id }) => id === 'back')?.work).toMatchObject({ entry: { writtenAt: '2026-03-01T10:00:05.000Z', saying: { entryId: 'note' } } });
  });

  test('and is taken back takes its note back, or withdraws it', async () => {
    const store = await given();
    expect(await takeBack(store, ['one'], NOW)).toEqual([]);
    expect(await allHere(store)).toEqual([]);
    const other = await given();
    await sendNote(other);
    expect(await takeBack(other, ['one'], NOW)).toEqual([]);
    expect((await allHere(other)).map(({ id }) => id)).toEqual(['back']);
  });

  test('stays so where nothing could be kept: what went out already needs a correction first', async () => {
    const store = await given();
    await keep(store, [counted('two')], NOW);
    const two = (await unsent(store)).find(({ id }) => id === 'two');
    await letOut(store, [two?.at ?? 0]);
    expect(await keep(store, [counted('one', 7), counted('two', 3)], NOW + 1)).toEqual(['two']);
    expect(await decidedHere(store)).toMatchObject([{ id: 'one', decided: { noteId: 'note' } }]);
    expect(await waiting(store)).toEqual(['note', 'two']);
  });

  test('by a page of before that wrote no way to call it back is told anew all the same', async () => {
    const store = await fresh();
    await give(store, await refused(store), note('note'), undefined as never, NOW);
    await keep(store, [counted('one', 7)], NOW + 1);
    expect(await waiting(store)).toEqual(['one', 'note']);
  });
});

test('a note that was refused goes out once more about nothing but the programme', async () => {
  const store = await fresh();
  await give(store, await refused(store), note('note'), withdrawal, NOW);
  const [item] = await unsent(store);
  await markRefused(store, [{ at: item?.at ?? 0, refusal: REFUSAL }]);
  await sendOnceMore(store, item?.at ?? 0);
  const [again] = await unsent(store);
  expect(again?.refusal).toBeUndefined();
  expect(again?.work.kind === 'entry' && again.work.entry.saying).toEqual({ kind: 'noted', text: 'Could not be booked', notBooked: { id: 'one' } });
});

test('a file for another machine holds what was decided, to be read there and not sent', async () => {
  const [phone, desk] = [await fresh(), await fresh()];
  await give(phone, await refused(phone), note('note'), withdrawal, NOW + 1);
  const { text } = await rescueFile(phone, new Date(NOW));
  expect(await takeUp(desk, text, NOW)).toBe(1);
  expect(await takeUp(desk, text, NOW)).toBe(0);
  expect((await unsent(desk)).map(({ id }) => id)).toEqual(['note']);
  expect(await decidedHere(desk)).toMatchObject([{ id: 'one', refusal: REFUSAL, decided: { noteId: 'note' } }]);
  const one = JSON.parse((await rescueFile(phone, new Date(NOW), 'one')).text) as { items: { id: string }[] };
  expect(one.items.map(({ id }) => id)).toEqual(['one']);
});
