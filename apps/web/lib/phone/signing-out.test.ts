import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { counted } from '../../../../test/support/counted-on-a-phone.ts';
import { chooseAuthor } from './choose-author.ts';
import { authorHere } from './device.ts';
import { keep, unsent } from './outbox.ts';
import { peopleWithCodes, setCode } from './own-code.ts';
import type { KeptPack } from './pack-shapes.ts';
import { clearForSigningOut, unsentHere } from './signing-out.ts';
import { openStore } from './store.ts';

test('signing out takes packs, the choice of who logs and one’s own code; what is unsent stays with its author, and others keep their codes', async () => {
  const store = await openStore('signing-out');
  await store.put('packs', { programme: { handle: 'harrowdale' }, me: { personId: 'ann', name: 'Ann' } } as KeptPack, 'harrowdale');
  await Promise.all(['ann', 'ben'].map((person) => setCode(store, person, '2580', 1_000)));
  await chooseAuthor(store, 'harrowdale', { personId: 'ben', name: 'Ben' });
  expect((await authorHere(store, 'harrowdale')).personId).toBe('ben');
  await keep(store, [{ ...counted('one'), author: { personId: 'ben', name: 'Ben' } }], Date.UTC(2026, 2, 1));

  await clearForSigningOut(store);
  expect(await store.count('packs')).toBe(0);
  expect([...(await peopleWithCodes(store))]).toEqual(['ben']);
  expect(await unsentHere(store)).toBe(1);
  expect(await unsent(store)).toMatchObject([{ id: 'one', author: { personId: 'ben' } }]);
  // The next who signs in and packs logs under their own name.
  await store.put('packs', { programme: { handle: 'harrowdale' }, me: { personId: 'cat', name: 'Cat' } } as KeptPack, 'harrowdale');
  expect((await authorHere(store, 'harrowdale')).personId).toBe('cat');
});
