import { expect, test } from 'vitest';
import { photosSaid } from './photos-said.ts';

const TREE = { noun: 'donor-trees', id: 'tree' } as const;

function formOf(told: Readonly<Record<string, string>>, ...files: readonly string[]): FormData {
  const form = new FormData();
  for (const [name, value] of Object.entries({ id: 'made-with-the-page', noteId: 'note', writtenAt: '2026-03-01T10:00:00Z', takenOn: '2026-03-01', ...told })) form.append(name, value);
  for (const name of files) form.append('photos', new File(['x'], name));
  return form;
}
const queryOf = (form: FormData, subject: Parameters<typeof photosSaid>[1] = TREE) => Object.fromEntries(photosSaid(form, subject).photos[0]?.query ?? []);

test('a tree’s photos show where it stands only if that is ticked, and say so either way', () => {
  expect(queryOf(formOf({ showsWhere: 'on' }, 'a.jpg'))).toEqual({ donorTreeId: 'tree', takenOn: '2026-03-01', showsWhere: 'yes' });
  expect(queryOf(formOf({}, 'a.jpg'))).toEqual({ donorTreeId: 'tree', takenOn: '2026-03-01', showsWhere: 'no' });
});

test('several share one note; sent again they have the same ids', () => {
  const { note, photos } = photosSaid(formOf({ text: 'two brown tips' }, 'a.jpg', 'b.jpg'), { noun: 'batches', id: 'tray' });
  expect(note).toEqual({ id: 'note', observedOn: '2026-03-01', writtenAt: '2026-03-01T10:00:00Z', saying: { kind: 'noted', batchId: 'tray', text: 'two brown tips' } });
  expect(photos.map(({ query, file }) => [query.get('noteId'), file.name])).toEqual([['note', 'a.jpg'], ['note', 'b.jpg']]);
  const again = photosSaid(formOf({}, 'a.jpg', 'b.jpg'), TREE).photos.map(({ id }) => id);
  expect(again).toEqual(photos.map(({ id }) => id));
  expect(new Set(again).size).toBe(2);
});

test('a field that was left empty is no photo', () => {
  const form = formOf({ portrait: 'on' });
  form.append('photos', new File([], ''));
  expect(photosSaid(form, { noun: 'places', id: 'tray' }).photos).toEqual([]);
});
