import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { counted } from '../../../../test/support/counted-on-a-phone.ts';
import { keep, unsent } from './outbox.ts';
import { rescueFile, takeUp } from './rescue-file.ts';
import { openStore } from './store.ts';

const NOW = new Date('2026-03-01T10:00:00Z');
let nth = 0;
const fresh = () => openStore(`rescue-${++nth}`);

test('what is only on one device is taken up by another, bytes of photos too, and nothing twice', async () => {
  const [phone, desk] = [await fresh(), await fresh()];
  const bytes = Uint8Array.from({ length: 300 }, (_, at) => at % 256).buffer;
  await keep(phone, [counted('one'), { ...counted('two'), work: { kind: 'photo', path: '/api/v1/programmes/harrowdale/photos/two', type: 'image/jpeg', bytes } }], NOW.getTime());
  const { name, text } = await rescueFile(phone, NOW);
  expect(name).toBe('sprigline-2026-03-01T10-00.json');
  expect(await takeUp(desk, text, 1)).toBe(2);
  expect(await takeUp(desk, text, 2)).toBe(0);
  const [first, second] = await unsent(desk);
  expect(first).toMatchObject({ id: 'one', author: { name: 'Ann' } });
  expect(second?.work.kind === 'photo' && [...new Uint8Array(second.work.bytes)]).toEqual([...new Uint8Array(bytes)]);
});

test.each([
  ['', 'not-a-file-of-ours'],
  ['null', 'not-a-file-of-ours'],
  ['{"what":"something else"}', 'not-a-file-of-ours'],
  ['{"what":"sprigline/only-on-this-device","version":2,"items":[]}', 'newer-than-this'],
  ['{"what":"sprigline/only-on-this-device","version":1}', 'broken'],
  ['{"what":"sprigline/only-on-this-device","version":1,"items":[{"id":"x"}]}', 'broken'],
  ['{"what":"sprigline/only-on-this-device","version":1,"items":[{"id":"x","programme":"p","about":"a","author":{"personId":"y"},"work":{"kind":"record","path":"https://elsewhere.example/"}}]}', 'broken'],
])('a file that is not one is refused: %s', async (text, why) => {
  expect(await takeUp(await fresh(), text, 1)).toBe(why);
});
