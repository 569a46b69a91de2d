import 'fake-indexeddb/auto';
import { PutPhoto } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { newId } from '../new-id.ts';
import { keep, unsent } from './outbox.ts';
import { photoWork, smallPhoto } from './photo-work.ts';
import { rescueFile } from './rescue-file.ts';
import { openStore } from './store.ts';

/** As a camera writes it: where it was, in the clear, among the pixels. */
const WITH_PLACE = new Blob(['\u00ff\u00d8 Exif GPSLatitude 54.4321 GPSLongitude -2.1234 pixels'], { type: 'image/jpeg' });
/** Stands for the canvas of a browser, which hands on pixels and nothing else. */
const drawn = () => Promise.resolve({ blob: new Blob(['pixels']) });

test('of a chosen file only what was drawn anew is kept: no place is in the outbox, nor in the file for another machine', async () => {
  const store = await openStore('photo-work');
  const photo = await smallPhoto(WITH_PLACE, drawn);
  await keep(store, [{ ...photoWork('harrowdale', photo, { donorTreeId: newId() }, { about: 'SG-9', takenOn: '2026-03-01', takenBy: newId() }), programme: 'harrowdale', author: { personId: newId(), name: 'Ann' } }], 1);
  const [item] = await unsent(store);
  expect(item?.work.kind === 'photo' && new TextDecoder().decode(item.work.bytes)).toBe('pixels');
  const { text } = await rescueFile(store, new Date(1));
  for (const said of [text, ...[...text.matchAll(/"bytes": "([^"]+)"/g)].map(([, bytes = '']) => atob(bytes))]) expect(said).not.toMatch(/GPS|Exif|54\.4321/);
});

test('what cannot be drawn is not kept as it came', async () => {
  await expect(smallPhoto(WITH_PLACE, () => Promise.reject(new Error('notReadable')))).rejects.toThrow('notReadable');
});

test.each([{ batchId: newId(), noteId: newId() }, { placeId: newId(), noteId: newId() }, { donorTreeId: newId() }])('it is sent as the contract has it: %o', async (subject) => {
  const photo = await smallPhoto(WITH_PLACE, drawn);
  const { work } = photoWork('harrowdale', photo, subject, { about: 'SG-9', takenOn: '2026-03-01', takenBy: newId() });
  const asked = Object.fromEntries(new URLSearchParams(work.kind === 'photo' ? work.path.split('?')[1] : ''));
  expect(PutPhoto.parse(asked)).toMatchObject({ ...subject, takenOn: '2026-03-01', kind: 'plain' });
});
