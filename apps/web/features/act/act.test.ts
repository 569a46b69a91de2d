import { NewEntry } from '@sprigline/contract';
import { describe, expect, test } from 'vitest';
import { newId } from '../../lib/new-id.ts';
import { type Act, actsFor, entryOf, slipIn, type Told } from './act.ts';

const [batchId, placeId, elsewhere] = [newId(), newId(), newId()];
const ids = { entryId: newId(), toBatchId: newId() };
const when = { day: '2026-03-01', seenBy: '' };
const moment = { minute: 600, writtenAt: '2026-03-01T10:00:00Z' };

const CASES: readonly (readonly [Act, Told, object])[] = [
  ['pot', { n: 12, placeId, container: ' 1 l pot ', medium: '', label: 'P-1', leavesNone: true }, { kind: 'potted', batchId, n: 12, toBatchId: ids.toBatchId, placeId, container: '1 l pot', label: 'P-1', leavesNone: true }],
  ['lift', { n: 3, placeId, leavesNone: false }, { kind: 'lifted', batchId, n: 3, toBatchId: ids.toBatchId, placeId }],
  ['plant', { n: 3, placeId, medium: 'typed before another act was chosen' }, { kind: 'planted', batchId, n: 3, toBatchId: ids.toBatchId, placeId }],
  ['pot', { n: 2, placeId, joinId: elsewhere, label: 'P-1', rows: '3', container: '1 l pot' }, { kind: 'potted', batchId, n: 2, toBatchId: elsewhere, placeId }],
  ['lift', { n: 3, placeId, rows: ' 3-5 ' }, { kind: 'lifted', batchId, n: 3, toBatchId: ids.toBatchId, placeId, rows: '3-5' }],
  ['move', { n: 3, placeId, rows: '2', label: 'k58y 9j69' }, { kind: 'moved', batchId, n: 3, toBatchId: ids.toBatchId, placeId, label: 'K58Y9J69', rows: '2' }],
  ['plant', { n: 3, placeId, joinId: elsewhere, positions: 'r1 c1, r1 c2;\nr1 c3' }, { kind: 'planted', batchId, n: 3, toBatchId: elsewhere, placeId, positions: ['r1 c1', 'r1 c2', 'r1 c3'] }],
  ['move', { all: true, n: 4, placeId, label: 'X' }, { kind: 'moved', batchId, placeId }],
  ['move', { n: 4, placeId }, { kind: 'moved', batchId, n: 4, toBatchId: ids.toBatchId, placeId }],
  ['call', { n: 7 }, { kind: 'called', batchId, n: 7 }],
  ['throwOut', { n: 1, reason: ' broken top ' }, { kind: 'thrownOut', batchId, n: 1, reason: 'broken top' }],
  ['note', { text: 'new buds' }, { kind: 'noted', batchId, text: 'new buds' }],
];

test.each(CASES)('%s becomes one entry, which the contract takes', (act, told, saying) => {
  const entry = entryOf(act, batchId, told, ids, when, moment);
  expect(entry).toEqual({ id: ids.entryId, observedOn: '2026-03-01', minute: 600, writtenAt: moment.writtenAt, saying });
  expect(NewEntry.safeParse(entry).success).toBe(true);
});

test('who did it and the workday are told where they were chosen', () => {
  expect(entryOf('call', batchId, { n: 1 }, ids, { ...when, seenBy: 'she', workdayId: 'day' }, { writtenAt: moment.writtenAt })).toEqual({
    id: ids.entryId, observedOn: '2026-03-01', seenBy: 'she', workdayId: 'day', writtenAt: moment.writtenAt, saying: { kind: 'called', batchId, n: 1 },
  });
});

describe('what is missing is asked for before anything is kept', () => {
  const taken = new Set(['P-1', 'WS23 4456']);
  const [right, wrong] = ['K58Y9J69', 'K58Y9J68'];
  test.each<readonly [Act, Told, string | undefined]>([
    ['pot', { placeId: elsewhere }, 'howMany'],
    ['pot', { n: 0, placeId: elsewhere }, 'howMany'],
    ['pot', { n: 5 }, 'where'],
    ['pot', { n: 5, placeId: elsewhere }, undefined],
    ['pot', { n: 5, placeId: elsewhere, label: 'p-1' }, 'labelTaken'],
    // Of an old numbering that looks like our codes.
    ['pot', { n: 5, placeId: elsewhere, label: 'ws23 4456' }, 'labelTaken'],
    ['pot', { n: 5, placeId: elsewhere, label: 'ws23 4457' }, 'label'],
    ['pot', { n: 5, placeId: elsewhere, label: wrong }, 'label'],
    ['pot', { n: 5, placeId: elsewhere, label: right.toLowerCase() }, undefined],
    ['move', { all: true, placeId }, 'samePlace'],
    ['move', { all: true, placeId: elsewhere, label: wrong }, undefined],
    ['move', { n: 5, placeId: elsewhere, rows: 'three' }, 'rows'],
    ['move', { n: 5, placeId: elsewhere, rows: '3-5' }, undefined],
    ['pot', { n: 5, placeId: elsewhere, joinId: batchId, rows: 'three', label: wrong }, undefined],
    ['plant', { n: 1, placeId: elsewhere, positions: 'r1 c1, r1 c2' }, 'positions'],
    ['plant', { n: 2, placeId: elsewhere, positions: 'r1 c1, r1 c2,' }, undefined],
    ['throwOut', { n: 1, reason: ' ' }, 'why'],
    ['note', { text: '' }, 'text'],
    ['call', { n: 1 }, undefined],
  ])('%s %o', (act, told, slip) => {
    expect(slipIn(act, told, placeId, taken)).toBe(slip);
  });
});

test('held plants are not moved on a phone either, and planted ones go no further', () => {
  expect(actsFor('cutting', true)).toEqual(['call', 'throwOut', 'note']);
  expect(actsFor('planted', false)).toEqual(['move', 'note']);
});
