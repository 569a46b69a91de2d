import { expect, test } from 'vitest';
import { pathTo, placeChoices } from './place-path.ts';

const plain = { kind: 'bench' as const, closedOn: null, walkOrder: 0, rows: null, partnerId: null, note: null, roundEveryDays: null, batches: 0, plants: 0, plantsWithin: 0 };
const house = { ...plain, id: 'h', name: 'Glasshouse', parentId: null, depth: 0 };
const bench = { ...plain, id: 'b', name: 'Bench 1', parentId: 'h', depth: 1 };
const tray = { ...plain, id: 't', name: 'Tray 4', parentId: 'b', depth: 2 };

test('a place is told with all it lies in, the outermost first', () => {
  expect(pathTo([house, bench, tray], 't').map(({ name }) => name)).toEqual(['Glasshouse', 'Bench 1', 'Tray 4']);
});

test('what is not in the tree has no path', () => {
  expect(pathTo([house], 'x')).toEqual([]);
});

test('choices say where each place is', () => {
  expect(placeChoices([house, bench, tray], ({ id }) => id !== 'h')).toEqual([
    { value: 'b', words: 'Glasshouse › Bench 1' },
    { value: 't', words: 'Glasshouse › Bench 1 › Tray 4' },
  ]);
});
