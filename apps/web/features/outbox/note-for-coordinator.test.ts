import { NewEntry, Noted } from '@sprigline/contract';
import { describe, expect, test } from 'vitest';
import { newId } from '../../lib/new-id.ts';
import type { OutboxItem } from '../../lib/phone/outbox-item.ts';
import { canBeGiven, noteOf, withdrawalOf } from './note-for-coordinator.ts';

const [packed, unpacked, bench, id] = [newId(), newId(), newId(), newId()];
const known = { names: new Map([[bench, 'Bench A'], [packed, 'JC-12']]), placeOf: new Map([[packed, 'House 1 › Bench A']]) };
const made = { id: newId(), text: 'Could not be booked: potted up: 12', cutWords: 'The end is missing.', observedOn: '2026-03-01', writtenAt: '2026-03-01T10:00:00Z' };

function item(saying: object, code = 'batch/label-taken'): OutboxItem {
  const entry = { id, observedOn: '2026-03-01', writtenAt: '2026-03-01T10:00:00Z', saying } as never;
  return { id, at: 1, keptAt: 1, programme: 'harrowdale', author: { personId: 'ann', name: 'Ann' }, about: 'JC-12', work: { kind: 'entry', entry }, refusal: { type: `/problems/${code}`, title: 'No', status: 409 } };
}

test.each([
  ['on the batch', { kind: 'potted', batchId: packed, placeId: bench }, 'batch/label-taken', { batchId: packed }],
  ['on the place, where the batch may be known nowhere else', { kind: 'potted', batchId: unpacked, placeId: bench }, 'batch/label-taken', { placeId: bench }],
  ['on the tray that cuttings were stuck into', { kind: 'stuck', batchId: unpacked, placeId: bench }, 'batch/label-taken', { placeId: bench }],
  ['on nothing, where nothing of it is known for sure', { kind: 'died', batchId: unpacked }, 'ledger/not-a-count', {}],
  ['on nothing, where what it names is what was refused', { kind: 'potted', batchId: packed, placeId: bench }, 'entry/names-unknown-record', {}],
])('a note stands %s', (_, saying, code, about) => {
  const note = noteOf(item(saying, code), made, known);
  expect(note.saying).toEqual({ kind: 'noted', ...about, text: made.text, notBooked: { id, code } });
  expect(Noted.safeParse(note.saying).success).toBe(true);
});

test('a record or a photo is told on nothing', () => {
  const photo: OutboxItem = { ...item({}), work: { kind: 'photo', path: '/api/v1/programmes/harrowdale/photos/x', type: 'image/jpeg', bytes: new ArrayBuffer(1) } };
  const note = noteOf(photo, made, known);
  expect(NewEntry.safeParse(note).success).toBe(true);
  expect(note.saying).not.toHaveProperty('batchId');
});

describe('a text that is too long for a note', () => {
  const said = (text: string): string[] => {
    const entry = noteOf(item({ kind: 'died', batchId: packed }), { ...made, text }, known);
    expect(NewEntry.safeParse(entry).success).toBe(true);
    return [(entry.saying as { text: string }).text, ...(entry.note === undefined ? [] : [entry.note])];
  };

  test('goes on behind it, word for word', () => {
    const text = Array.from({ length: 1_400 }, (_, nth) => `w${nth}`).join(' ');
    expect(text.length).toBeGreaterThan(4_000);
    const parts = said(text);
    expect(parts).toHaveLength(2);
    expect(parts.join(' ')).toBe(text);
  });

  test('that is too long for both parts says at its end that something is missing, and where it is', () => {
    const [first = '', second = ''] = said('tree '.repeat(4_000));
    expect([first.length, second.length].every((length) => length > 3_900 && length <= 4_000)).toBe(true);
    expect(second.endsWith(`tree\n${made.cutWords}`)).toBe(true);
  });

  test('without any gap is never cut in the middle of a sign, and exactly as much as fits is not cut', () => {
    const text = `x${'🌲'.repeat(2_000)}${'y'.repeat(3_000)}`;
    const parts = said(text);
    expect(parts.join('')).toBe(text);
    // Half a sign has no address.
    expect(() => parts.map(encodeURI)).not.toThrow();
    expect(said('z'.repeat(4_000))).toEqual(['z'.repeat(4_000)]);
  });
});

test('a note is called back as the version that went out', () => {
  const note = noteOf(item({ kind: 'died', batchId: packed }), made, known);
  const back = withdrawalOf(note, newId(), 'Told anew.');
  expect(NewEntry.safeParse(back).success).toBe(true);
  expect(back.saying).toEqual({ kind: 'withdrawn', entryId: note.id, sawVersion: note.id, reason: 'Told anew.' });
});

test('whoever may not write at all, and a note itself, are not offered it', () => {
  expect(canBeGiven(item({ kind: 'died' }))).toBe(true);
  expect(canBeGiven(item({ kind: 'died' }, 'programme/unknown'))).toBe(false);
  expect(canBeGiven(item({ kind: 'noted', notBooked: { id } }))).toBe(false);
  expect(canBeGiven({ ...item({ kind: 'died' }), refusal: undefined })).toBe(false);
});
