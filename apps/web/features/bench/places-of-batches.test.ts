import type { PlaceInTree } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { placesOfBatches } from './places-of-batches.ts';

const place = (id: string, kind: string, parentId: string | null) => ({ id, kind, name: id, parentId }) as PlaceInTree;
const PLACES = [place('House', 'house', null), place('Bench 1', 'bench', 'House'), place('Tray 4', 'tray', 'Bench 1'), place('Tray 5', 'tray', 'Bench 1'), place('Frame', 'frame', null), place('Loose', 'tray', null)];
const batch = (id: string, balance: number) => ({ place: { id, name: id }, balance });

test('trays count with the bench that they lie on, and what stands elsewhere for itself', () => {
  expect(placesOfBatches([batch('Tray 4', 12), batch('Frame', 3), batch('Tray 5', 8), batch('Bench 1', 1)], PLACES)).toEqual([
    { placeId: 'Bench 1', words: 'House › Bench 1', batches: 3, plants: 21 },
    { placeId: 'Frame', words: 'Frame', batches: 1, plants: 3 },
  ]);
});

test('a tray that lies nowhere is a place, and a place that is hidden is none', () => {
  expect(placesOfBatches([batch('Loose', 2), batch('unknown', 2), { place: null, balance: 2 }], PLACES)).toMatchObject([{ placeId: 'Loose' }]);
});
