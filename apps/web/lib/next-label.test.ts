import { expect, test } from 'vitest';
import { nextLabels } from './next-label.ts';

test('counts on from the highest label of the commonest kind', () => {
  expect(nextLabels(['T009', 'P3', 'T011', 'T010'], 2)).toEqual(['T012', 'T013']);
});

test('keeps the width of its figures, and grows past it', () => {
  expect(nextLabels(['T099'], 1)).toEqual(['T100']);
  expect(nextLabels(['T999'], 1)).toEqual(['T1000']);
});

test('of kinds used as often, takes the one used last', () => {
  expect(nextLabels(['B2', 'A7'], 1)).toEqual(['B3']);
});

test('suggests nothing where no label ends in figures', () => {
  expect(nextLabels(['north tray', ''], 1)).toEqual([]);
  expect(nextLabels([], 1)).toEqual([]);
});
