import { expect, test } from 'vitest';
import type { EntryToSend } from '../entry-to-send.ts';
import { booksAhead } from './books.ts';
import { openedHere } from './opened-here.ts';

const tray = { id: 'tray', stage: 'cutting', stickingId: 'cohort', openingEntryId: 'stuck', openingPlaceId: 'bench' } as const;
const entry = (id: string, saying: EntryToSend['saying']): EntryToSend => ({ id, observedOn: '2026-03-01', writtenAt: '2026-03-01T10:00:00Z', saying });
const potting = entry('a', { kind: 'potted', batchId: 'tray', n: 12, toBatchId: 'pots', placeId: 'ground', label: 'P-1' });
const parting = entry('b', { kind: 'moved', batchId: 'pots', n: 5, toBatchId: 'some', placeId: 'house' });

test('a batch potted up here is of the sticking of its tray, and so is what is parted from it', () => {
  expect(openedHere([potting, parting], [tray])).toEqual([
    { batch: { id: 'pots', stage: 'potted', stickingId: 'cohort', openingEntryId: 'a', openingPlaceId: 'ground' }, fromBatchId: 'tray', label: 'P-1', rows: undefined, openedOn: '2026-03-01' },
    { batch: { id: 'some', stage: 'potted', stickingId: 'cohort', openingEntryId: 'b', openingPlaceId: 'house' }, fromBatchId: 'pots', label: undefined, rows: undefined, openedOn: '2026-03-01' },
  ]);
});

test('its books are those of what was logged here', () => {
  const [pots] = openedHere([potting, parting], [tray]);
  const { after } = booksAhead({ batch: pots?.batch ?? tray, entries: [] }, [potting, parting], new Set(), '2026-03-01');
  expect([after.balance, after.flags]).toEqual([7, []]);
});

test('what was taken back opens nothing, what was packed is not new, what is of another walk is not of this one, and a whole batch that moves stays itself', () => {
  const withdrawal = entry('c', { kind: 'withdrawn', entryId: 'a', sawVersion: 'a', reason: 'a slip' });
  expect(openedHere([potting, withdrawal], [tray])).toEqual([]);
  expect(openedHere([potting], [tray, { ...tray, id: 'pots' }])).toEqual([]);
  expect(openedHere([potting], [])).toEqual([]);
  expect(openedHere([entry('d', { kind: 'moved', batchId: 'tray', placeId: 'house' })], [tray])).toEqual([]);
});
