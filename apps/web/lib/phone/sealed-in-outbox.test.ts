import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { madeHere, rememberMade } from './made.ts';
import { keep } from './outbox.ts';
import { rescueFile } from './rescue-file.ts';
import { sealPlace } from './seal.ts';
import { openStore } from './store.ts';

const KEY = { id: 'key', publicKey: Buffer.from('04fe8c19ce0905191ebc298a9245792531f26f0cece2460639e8bc39cb7f706a826a779b4cf969b8a0e539c7f62fb3d30ad6aa8f80e30f1d128aafd68a2ce72ea0', 'hex').toString('base64url') };
const PLACE = { latitude: 3.417001, longitude: -28.583001, uncertaintyM: 4, elevationM: null, directions: 'by the leaning post' };

test('outbox and rescue file hold a sealed place, and nothing of where it is', async () => {
  const store = await openStore('sealed-in-outbox');
  const { sealed } = await sealPlace(PLACE, KEY, { programmeId: 'harrowdale', donorTreeId: 'tree' });
  await keep(store, [{ id: 'letter', programme: 'harrowdale', author: { personId: 'ada', name: 'Ada' }, about: 'SG-9', work: { kind: 'record', method: 'PUT', path: '/api/v1/programmes/harrowdale/donor-trees/tree/sealed-place', body: { sealed } } }], 0);
  const everything = [JSON.stringify(await store.getAll('outbox')), (await rescueFile(store, new Date(0))).text].join('\n');
  expect(everything).toContain(sealed.ciphertext);
  expect(everything).not.toMatch(/417001|583001|leaning/);
  expect(Buffer.from(sealed.ciphertext, 'base64url').toString('latin1')).not.toMatch(/417001|583001|leaning/);
});

test('a key that is none seals nothing', async () => {
  await expect(sealPlace(PLACE, { id: 'key', publicKey: 'AAAA' }, { programmeId: 'harrowdale', donorTreeId: 'tree' })).rejects.toThrow();
});

test('what was made here is remembered, the newest first and each once', async () => {
  const store = await openStore('made-here');
  const tree = (id: string, label: string) => ({ id, label, standId: 'skell-gill', taxonId: 'yew' });
  await rememberMade(store, 'harrowdale', { donorTrees: [tree('one', 'SG-1')] });
  await rememberMade(store, 'harrowdale', { donorTrees: [tree('two', 'SG-2')] });
  await rememberMade(store, 'harrowdale', { donorTrees: [tree('one', 'SG-1a')] });
  expect((await madeHere(store, 'harrowdale')).donorTrees.map(({ label }) => label)).toEqual(['SG-1a', 'SG-2']);
  expect(await madeHere(store, 'winterbeck')).toEqual({ trips: [], donorTrees: [], bundles: [] });
});
