import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { counted } from '../../../../test/support/counted-on-a-phone.ts';
import type { Ask, Asked } from './ask.ts';
import { keep } from './outbox.ts';
import { openStore } from './store.ts';
import { deviceId, deviceName, nameDevice, programmesHere, tellOfDevice } from './telling.ts';

let nth = 0;
const fresh = () => openStore(`telling-${++nth}`);
const NOON = new Date(2026, 2, 1, 12).getTime();

function heard(): { ask: Ask; told: { path: string; json: unknown }[] } {
  const told: { path: string; json: unknown }[] = [];
  const ask: Ask = (path, { json }: Asked = {}) => {
    told.push({ path, json });
    return Promise.resolve({ status: 204, body: undefined, waitS: undefined });
  };
  return { ask, told };
}

test('a browser has one id, whoever asks first, and the name that somebody gave it', async () => {
  const store = await fresh();
  const ids = await Promise.all([deviceId(store), deviceId(store)]);
  expect(new Set([...ids, await deviceId(store)]).size).toBe(1);
  await nameDevice(store, '  Bench tablet ');
  expect(await deviceName(store)).toBe('Bench tablet');
  await nameDevice(store, ' ');
  expect(await deviceName(store)).toBeUndefined();
});

test('tells each programme of what waits for it, and since which day', async () => {
  const store = await fresh();
  await keep(store, [counted('one'), counted('two')], NOON);
  await keep(store, [{ ...counted('three'), programme: 'winterbeck' }], NOON + 86_400_000);
  const { ask, told } = heard();
  const programmes = await programmesHere(store);
  await tellOfDevice(store, ask, [...programmes, 'bare'], { hasPacked: true });
  const id = await deviceId(store);
  expect(told).toEqual([
    { path: `/api/v1/programmes/${programmes[0]}/devices/${id}`, json: { name: null, unsent: 2, oldestUnsentOn: '2026-03-01', app: null, hasPacked: true } },
    { path: `/api/v1/programmes/winterbeck/devices/${id}`, json: { name: null, unsent: 1, oldestUnsentOn: '2026-03-02', app: null, hasPacked: true } },
    { path: `/api/v1/programmes/bare/devices/${id}`, json: { name: null, unsent: 0, oldestUnsentOn: null, app: null, hasPacked: true } },
  ]);
  // What was told a moment ago is not told again; what changed is.
  await tellOfDevice(store, ask, [...programmes, 'bare'], { hasPacked: true });
  expect(told).toHaveLength(3);
  await nameDevice(store, 'Bench tablet');
  await tellOfDevice(store, ask, ['bare'], { hasPacked: true });
  expect(told).toHaveLength(4);
});

test('a server that does not answer does no harm', async () => {
  const store = await fresh();
  await keep(store, [counted('one')], NOON);
  await expect(tellOfDevice(store, () => Promise.reject(new TypeError('Failed to fetch')), ['harrowdale'])).resolves.toBeUndefined();
});
