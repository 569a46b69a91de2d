import { expect, test } from 'vitest';
import { chosenIn, groupIn, queryOf } from './reading-address.ts';

test('keeps what makes sense and leaves out the rest', () => {
  expect(chosenIn({ season: '2024', standId: 'no id', ageClass: 'old', recipeId: '', weather: 'wet', taxonId: ['a', 'b'] })).toEqual({ season: '2024', ageClass: 'old' });
});

test('an address says what was chosen, and nothing when nothing was', () => {
  expect(queryOf({ season: '2024', ageClass: 'old' })).toBe('?season=2024&ageClass=old');
  expect(queryOf({})).toBe('');
});

test('funnels are told apart by stand unless the address says otherwise', () => {
  expect(groupIn({ by: 'season' })).toBe('season');
  expect(groupIn({ by: 'weather' })).toBe('stand');
  expect(groupIn({})).toBe('stand');
});
