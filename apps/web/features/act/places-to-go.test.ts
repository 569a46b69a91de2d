import type { Pack } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { placesToGo } from './places-to-go.ts';

const place = (id: string, kind: Pack['places'][number]['kind'], parentId: string | null) => ({ id, name: id, kind, parentId, batches: 0 });
const places = [
  place('House 1', 'house', null), place('Bench A', 'bench', 'House 1'), place('T1', 'tray', 'Bench A'), place('T2', 'tray', 'Bench A'),
  place('Lowmire Wood', 'site', null), place('P1', 'plot', 'Lowmire Wood'), place('Thornber School', 'partner', null),
];
const names = (...question: Parameters<typeof placesToGo>) => placesToGo(...question).shown.map(({ name }) => name);

test('trees are planted at sites, pots stand at home, and cuttings go into trays', () => {
  expect(names(places, 'plant', '', [], undefined)).toEqual(['Lowmire Wood', 'P1']);
  expect(names(places, 'pot', '', [], undefined)).toEqual(['House 1', 'Bench A', 'T1', 'T2']);
  expect(names(places, 'stick', '', [], undefined)).toEqual(['T1', 'T2']);
});

test('what was used last stands first, the chosen one before it', () => {
  expect(names(places, 'pot', '', ['T2', 'T1'], undefined)).toEqual(['T2', 'T1', 'House 1', 'Bench A']);
  expect(names(places, 'pot', '', ['T2'], 'Bench A')).toEqual(['Bench A', 'T2', 'House 1', 'T1']);
});

test('typing narrows by name and by what it lies in, and never hides the chosen one', () => {
  expect(names(places, 'pot', 'bench t', [], undefined)).toEqual(['T1', 'T2']);
  expect(names(places, 'pot', 't2', [], 'T1')).toEqual(['T1', 'T2']);
  expect(placesToGo(places, 'pot', 't1', [], undefined).shown).toEqual([{ id: 'T1', name: 'T1', within: 'House 1 › Bench A' }]);
});

test('a long list is cut, and says by how much', () => {
  const many = Array.from({ length: 30 }, (_, at) => place(`T${at}`, 'tray', null));
  expect(placesToGo(many, 'stick', '', [], undefined)).toMatchObject({ more: 22 });
});
