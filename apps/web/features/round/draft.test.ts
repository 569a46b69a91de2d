import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openStore, type Store } from '../../lib/phone/store.ts';
import { bringBackDraft, type Draft, keepSurely } from './draft.ts';

const KEY = 'sprigline/round/2/harrowdale/frame/ann';
const told = (...batchIds: string[]): Draft => ({ day: '2026-03-01', seenBy: '', look: 'look', kept: {}, answers: Object.fromEntries(batchIds.map((id) => [id, { batchId: id } as Draft['answers'][string]])) });

let store: Store;
let here: Map<string, string>;
const storage = { getItem: (key: string) => here.get(key) ?? null, setItem: (key: string, text: string) => void here.set(key, text), removeItem: (key: string) => void here.delete(key) };

beforeEach(async () => {
  here = new Map();
  store = await openStore(`draft ${Math.random()}`);
});
afterEach(() => store.close());

test('what a phone that died forgot of a walk is brought back, and whose answers those are is told', async () => {
  await keepSurely(store, KEY, told('b1', 'b2'));
  here.set(KEY, JSON.stringify(told('b1')));
  expect(await bringBackDraft(store, storage, KEY)).toEqual(['b1', 'b2']);
  expect(JSON.parse(here.get(KEY) ?? '')).toEqual(told('b1', 'b2'));
});

test('a walk that was over does not come back', async () => {
  await keepSurely(store, KEY, told('b1'));
  await keepSurely(store, KEY, null);
  here.set(KEY, JSON.stringify(told('b1')));
  expect(await bringBackDraft(store, storage, KEY)).toEqual([]);
  expect(here.has(KEY)).toBe(false);
});

test('as it was left, nothing is touched; neither is a walk that an earlier version kept', async () => {
  here.set(KEY, JSON.stringify(told('b1')));
  expect(await bringBackDraft(store, storage, KEY)).toEqual([]);
  await keepSurely(store, KEY, told('b1'));
  expect(await bringBackDraft(store, storage, KEY)).toEqual([]);
  expect(JSON.parse(here.get(KEY) ?? '')).toEqual(told('b1'));
});
