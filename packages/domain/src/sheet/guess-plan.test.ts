import { expect, test } from 'vitest';
import { guessActs, guessColumns } from './guess-plan.ts';
import { placePath } from './place-path.ts';

test('headings are guessed by what people write over a column', () => {
  expect(guessColumns(['Date', 'WHAT', 'Label', 'Donor tree', 'how many', 'to_label', 'Remarks', 'weather'])).toEqual({
    date: 0, what: 1, label: 2, donor: 3, count: 4, toLabel: 5, notes: 6,
  });
});

test('a column serves one field only', () => {
  const columns = Object.values(guessColumns(['place', 'place', 'count', 'n']));

  expect(new Set(columns).size).toBe(columns.length);
});

test('words for what was done are guessed; unknown ones are left to a person', () => {
  expect(guessActs(['Counted', ' thrown  out', 'given', 'watered'])).toEqual({ counted: 'counted', 'thrown out': 'thrownOut', given: 'givenOut' });
});

test('a place is read from the outside in', () => {
  expect(placePath('House A / bench 3 / tray 1')).toEqual([
    { name: 'House A', kind: 'house' }, { name: 'bench 3', kind: 'bench' }, { name: 'tray 1', kind: 'tray' },
  ]);
  expect(placePath('Hag Bank', 'site')).toEqual([{ name: 'Hag Bank', kind: 'site' }]);
});
