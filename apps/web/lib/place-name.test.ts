import { expect, test } from 'vitest';
import { placeName } from './place-name.ts';

const places = [
  { id: 'h', name: 'Glasshouse', parentId: null },
  { id: 'b', name: 'Bench 1', parentId: 'h' },
  { id: 'o', name: 'Old house', parentId: null },
  { id: 'p', name: 'Bench 1', parentId: 'o' },
];

test('a bench is told apart from the one of the same name in another house', () => {
  expect(['b', 'p', 'h'].map((id) => placeName(places, id))).toEqual(['Glasshouse › Bench 1', 'Old house › Bench 1', 'Glasshouse']);
});

test('what lies in a place that nobody knows, such as a closed one, keeps its own name; what is unknown has none', () => {
  expect([placeName([{ id: 'b', name: 'Bench 1', parentId: 'gone' }], 'b'), placeName(places, 'x')]).toEqual(['Bench 1', '']);
});
