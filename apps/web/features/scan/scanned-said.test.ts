import { expect, test } from 'vitest';
import { scannedSaid } from './scanned-said.ts';

function formOf(told: Readonly<Record<string, string>>): FormData {
  const form = new FormData();
  for (const [name, value] of Object.entries({ observedOn: '2026-11-27', madeOn: '2026-11-27', minute: '600', writtenAt: '2026-11-27T10:00:00Z', placeId: 'place', lines: '4', ...told })) form.set(name, value);
  return form;
}

const line = (at: number, more: Readonly<Record<string, string>> = {}) =>
  Object.fromEntries(Object.entries({ batchId: `batch ${at}`, entryId: `entry ${at}`, toBatchId: `tree ${at}`, stage: 'potted', ...more }).map(([field, value]) => [`lines/${at}/${field}`, value]));

test('in the nursery every scanned batch is moved, whole; lines that were taken off say nothing', () => {
  expect(scannedSaid(formOf({ ...line(0), ...line(3) }), false)).toEqual([0, 3].map((at) => ({
    at, entry: { id: `entry ${at}`, observedOn: '2026-11-27', minute: 600, writtenAt: '2026-11-27T10:00:00Z', note: undefined, saying: { kind: 'moved', batchId: `batch ${at}`, placeId: 'place' } },
  })));
});

test('at a site what stood in pots is planted, so many as were told, and trees that grow already are moved', () => {
  const said = scannedSaid(formOf({ ...line(0, { n: '3' }), ...line(1, { stage: 'planted' }), ...line(2) }), true).map(({ entry }) => entry.saying);

  expect(said).toEqual([
    { kind: 'planted', batchId: 'batch 0', n: 3, toBatchId: 'tree 0', placeId: 'place' },
    { kind: 'moved', batchId: 'batch 1', placeId: 'place' },
    // Nobody guesses how many: the API asks.
    { kind: 'planted', batchId: 'batch 2', n: undefined, toBatchId: 'tree 2', placeId: 'place' },
  ]);
});

test('on another day the minute of the page says nothing', () => {
  expect(scannedSaid(formOf({ ...line(0), observedOn: '2026-11-20' }), false)[0]?.entry).toMatchObject({ observedOn: '2026-11-20', minute: undefined });
});
