import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import type { Asked } from './ask.ts';
import type { ToKeep, Work } from './outbox-item.ts';
import { keep, sentLately, unsent } from './outbox.ts';
import { relabel, refusedLabel } from './relabel.ts';
import { sendAll } from './sender.ts';
import { openStore, type Store } from './store.ts';

const API = '/api/v1/programmes/harrowdale';
const me = { personId: 'me', name: 'Ash K.' };
const item = (id: string, about: string, work: Work): ToKeep => ({ id, programme: 'harrowdale', author: me, about, work });
const record = (id: string, about: string, path: string, body: object, method: 'POST' | 'PUT' = 'POST'): ToKeep => item(id, about, { kind: 'record', method, path: `${API}/${path}`, body });
const stuck = (id: string, bundleId: string, label: string): ToKeep => item(id, 'SG-14', { kind: 'entry', entry: { id, observedOn: '2026-11-02', writtenAt: '2026-11-02T18:00:00Z', saying: { kind: 'stuck', batchId: `${id}-batch`, stickingId: `${id}-sticking`, n: 20, placeId: 'tray', bundleId, label } } });
const moved = (id: string, batchId: string): ToKeep => item(id, '…', { kind: 'entry', entry: { id, observedOn: '2026-11-03', writtenAt: '2026-11-03T18:00:00Z', saying: { kind: 'moved', batchId, placeId: 'bench' } } });

/** A server that has the tree SG-14 and a batch T1 already, and takes nothing that names what it does not have. */
function server() {
  const has = new Map<string, unknown>();
  const labels = new Set(['SG-14', 'T1']);
  const refuse = (type: string, status: number) => ({ status, body: { type: `/problems/${type}`, title: type, status }, waitS: undefined });
  const ask = async (path: string, { json }: Asked = {}) => {
    const body = json as { id?: string; label?: string; donorTreeId?: string; entries?: { id: string; saying: { bundleId?: string; batchId: string; label?: string } }[] };
    if (path.endsWith('/donor-trees')) {
      if (labels.has(body.label ?? '')) return refuse('record/name-taken', 409);
      labels.add(body.label ?? '');
      has.set(body.id ?? '', body);
      return { status: 201, body, waitS: undefined };
    }
    if (path.endsWith('/sealed-place')) return has.has(path.split('/').at(-2) ?? '') ? (has.set('place', body), { status: 200, body, waitS: undefined }) : refuse('record/unknown', 404);
    if (path.endsWith('/bundles')) return has.has(body.donorTreeId ?? '') ? (has.set(body.id ?? '', body), { status: 201, body, waitS: undefined }) : refuse('record/no-such-donor-tree', 422);
    const entries = (body.entries ?? []).map(({ id, saying }) => {
      if (saying.bundleId !== undefined && !has.has(saying.bundleId)) return { id, status: 'refused', problem: refuse('entry/names-unknown-record', 422).body, flags: [] };
      if (saying.label !== undefined && labels.has(saying.label)) return { id, status: 'refused', problem: refuse('batch/label-taken', 409).body, flags: [] };
      has.set(id, saying);
      return { id, status: 'written', flags: [] };
    });
    return { status: 200, body: { entries }, waitS: undefined };
  };
  return { ask, has };
}

const send = (store: Store, ask: ReturnType<typeof server>['ask']) => sendAll({ store, ask, now: () => 10, holdBackMs: 0 });
const states = async (store: Store) => (await unsent(store)).map(({ id, refusal }) => [id, refusal?.type.replace('/problems/', '') ?? 'waits']);

test('a tree whose label another phone gave first gets another one, and what waits behind it goes with it, under the same ids', async () => {
  const [store, { ask, has }] = [await openStore('relabel-tree'), server()];
  await keep(store, [
    record('id-tree', 'SG-14', 'donor-trees', { id: 'id-tree', label: 'SG-14', standId: 'stand' }),
    record('id-bundle', 'SG-14', 'trips/trip/bundles', { id: 'id-bundle', donorTreeId: 'id-tree', cuttings: 20 }),
    record('place', 'SG-14', 'donor-trees/id-tree/sealed-place', { sealed: { keyId: 'k', enc: 'e', ciphertext: 'c' } }, 'PUT'),
    stuck('night', 'id-bundle', 'T9'), moved('later', 'night-batch'), record('other', 'CR-2', 'donor-trees', { id: 'other', label: 'SG-14' }),
  ], 1);
  await send(store, ask);
  expect(await states(store)).toEqual([['id-tree', 'record/name-taken'], ['id-bundle', 'record/no-such-donor-tree'], ['place', 'record/unknown'], ['night', 'entry/names-unknown-record'], ['other', 'record/name-taken']]);

  const [tree] = await unsent(store);
  await relabel(store, tree?.at ?? 0, 'SG-15');
  expect(await states(store)).toEqual([['id-tree', 'waits'], ['id-bundle', 'waits'], ['place', 'waits'], ['night', 'waits'], ['other', 'record/name-taken']]);
  expect((await unsent(store))[0]).toMatchObject({ about: 'SG-15', was: ['SG-14'], work: { body: { id: 'id-tree', label: 'SG-15' } } });
  await send(store, ask);
  expect((await states(store)).map(([id]) => id)).toEqual(['other']);
  expect(has.get('place')).toEqual({ sealed: { keyId: 'k', enc: 'e', ciphertext: 'c' } });
  // What it was called stays readable with what was sent.
  expect((await sentLately(store)).find(({ id }) => id === 'id-tree')).toMatchObject({ about: 'SG-15', was: ['SG-14'] });
});

test('plants get another label or none, and what was refused twice tells both', async () => {
  const [store, { ask }] = [await openStore('relabel-plants'), server()];
  await keep(store, [record('id-tree', 'CR-9', 'donor-trees', { id: 'id-tree', label: 'CR-9' }), record('id-bundle', 'CR-9', 'trips/trip/bundles', { id: 'id-bundle', donorTreeId: 'id-tree', cuttings: 20 }), stuck('night', 'id-bundle', 'T1')], 1);
  await send(store, ask);
  const [refused] = await unsent(store);
  expect(refused && refusedLabel(refused)).toEqual({ label: 'T1', of: 'plants' });
  await relabel(store, refused?.at ?? 0, 'SG-14');
  await send(store, ask);
  await relabel(store, refused?.at ?? 0, undefined);
  await send(store, ask);
  expect(await unsent(store)).toEqual([]);
  const sent = (await sentLately(store)).find(({ id }) => id === 'night');
  expect(sent).toMatchObject({ was: ['T1', 'SG-14'], about: 'SG-14' });
  expect(sent?.work.kind === 'entry' && sent.work.entry.saying).not.toHaveProperty('label');
});

test('what was refused for another reason, or waits, is left as it is', async () => {
  const store = await openStore('relabel-not');
  await keep(store, [record('id-tree', 'SG-14', 'donor-trees', { id: 'id-tree', label: 'SG-14' })], 1);
  const [before] = await unsent(store);
  await relabel(store, before?.at ?? 0, 'SG-15');
  expect(await unsent(store)).toEqual([before]);
  expect(before && refusedLabel({ ...before, refusal: { type: '/problems/record/no-such-stand', title: '', status: 422 } })).toBeUndefined();
});
