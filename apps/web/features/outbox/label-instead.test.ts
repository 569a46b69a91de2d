import { expect, test } from 'vitest';
import { labelSlip, labelToSuggest, treesKnown } from './label-instead.ts';

const tree = (label: string, standId: string) => ({ id: label, label, standId, taxonId: '', state: 'standing' as const });
const trees = treesKnown({ donorTrees: [tree('SG-14', 'sg'), tree('SG-15', 'sg'), tree('SG-099', 'sg')], stands: [{ id: 'sg', name: 'Skell Gill', cell: null }] }, { donorTrees: [tree('SG-16', 'new')] });

test('trees that this phone knows are told with their stand, those made here too', () => {
  expect([...trees]).toEqual([['SG-16', ''], ['SG-14', 'Skell Gill'], ['SG-15', 'Skell Gill'], ['SG-099', 'Skell Gill']]);
});

test.each([['SG-14', 'SG-17'], ['SG-099', 'SG-100'], ['the old one', ''], ['', '']])('for %s it suggests "%s"', (label, next) => {
  expect(labelToSuggest({ label, of: 'donorTree' }, trees)).toBe(next);
});

test('of what is printed nothing is suggested: it stands on the label in the hand', () => {
  expect(labelToSuggest({ label: 'T14', of: 'plants' }, trees)).toBe('');
});

test.each([
  ['SG-14', 'donorTree', 'same'], [' ', 'donorTree', 'none'], ['SG-15', 'donorTree', 'taken'], ['SG-17', 'donorTree', undefined], ['x'.repeat(201), 'donorTree', 'long'],
  ['', 'plants', undefined], ['k58y 9j68', 'plants', 'mistyped'], ['k58y 9j69', 'plants', undefined], ['T 15', 'label', undefined], ['', 'label', 'none'], ['x'.repeat(41), 'label', 'long'],
] as const)('"%s" for a %s: %s', (typed, of, slip) => {
  expect(labelSlip(typed, { label: 'SG-14', of }, trees)).toBe(slip);
});
