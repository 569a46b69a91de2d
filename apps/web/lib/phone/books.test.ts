import type { PackedBooks } from '@sprigline/contract';
import { expect, test } from 'vitest';
import type { EntryToSend } from '../entry-to-send.ts';
import { booksAhead, isAbout } from './books.ts';

const said = (id: string, observedOn: string, saying: EntryToSend['saying']): EntryToSend => ({ id, observedOn, writtenAt: `${observedOn}T10:00:00Z`, saying });
const packed: PackedBooks = {
  batch: { id: 'tray', stage: 'cutting', stickingId: 'cohort', openingEntryId: 'stuck', openingPlaceId: 'bench' },
  entries: [
    { id: 'stuck', observedOn: '2025-10-02', receivedOn: '2025-10-02', door: 'desk', saying: { kind: 'stuck', batchId: 'tray', stickingId: 'cohort', n: 40, placeId: 'bench' } },
    { id: 'first', observedOn: '2025-12-01', receivedOn: '2025-12-01', door: 'desk', saying: { kind: 'counted', batchId: 'tray', alive: 35, look: 'look', dead: [] } },
  ],
};

test('shows the books as they will be: 35, two died, 34 counted gives one of the missing back', () => {
  const own = [said('died', '2026-01-10', { kind: 'died', batchId: 'tray', n: 2, cause: 'dry' }), said('count', '2026-01-11', { kind: 'counted', batchId: 'tray', alive: 34, look: 'look' })];
  const { before, after } = booksAhead(packed, own, new Set(['count']), '2026-01-11');
  expect([before.balance, after.balance]).toEqual([33, 34]);
  expect(after.movements.filter(({ entryId }) => entryId === 'count')).toMatchObject([{ effect: 'takenBack', n: 1 }]);
});

test('what was packed with its answer already counts once', () => {
  expect(booksAhead(packed, [said('first', '2025-12-01', { kind: 'counted', batchId: 'tray', alive: 35, look: 'look' })], new Set(), '2026-01-11').after.balance).toBe(35);
});

test('knows what an entry is about, also when it goes from one batch into another', () => {
  const potted = said('p', '2026-04-01', { kind: 'potted', batchId: 'tray', toBatchId: 'pots', n: 3, placeId: 'bench' });
  expect(['tray', 'pots', 'bench'].map((id) => isAbout(potted, id))).toEqual([true, true, false]);
});
