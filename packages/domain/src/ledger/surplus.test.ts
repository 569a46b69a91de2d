import { expect, test } from 'vitest';
import { booksOf, flagsOf, type Line, movementsOf } from '../../test/ledger/books-of.ts';
import * as say from '../../test/ledger/sayings.ts';
import type { Saying } from './entry.ts';

const TAKINGS: [saying: Saying, movement: string][] = [
  [say.died(7), 'died 7 dried out'],
  [say.thrownOut(7), 'thrownOut 7 bent'],
  [say.called(7), 'notRooted 7'],
  [say.lifted(7), 'wentOn 7'],
  [say.splitOff(7), 'splitOut 7'],
  [say.restuck(7), 'restuckOut 7'],
  [say.givenOut(7), 'givenOut 7'],
  [say.givenOut(7, { toBatchId: 'theirs' }), 'givenAcross 7'],
  [say.mixed('mix', ['tray', 7]), 'mixedOut 7'],
  [say.identified(7), 'identifiedOut 7'],
];

test.each(TAKINGS)('%o takes all that is there without a flag', (saying, movement) => {
  const books = booksOf([
    ['2025-01-10', say.stuck(7)],
    ['2025-02-10', saying],
  ]);
  expect(movementsOf(books)).toEqual(['e1 stuck 7', `e2 ${movement}`]);
  expect(books).toMatchObject({ balance: 0, flags: [] });
});

test.each(TAKINGS)('%o, more than is there, takes back the missing before it finds', (saying, movement) => {
  const books = booksOf([
    ['2025-01-10', say.stuck(6)],
    ['2025-02-10', say.counted(4)],
    ['2025-03-10', saying],
  ]);
  expect(movementsOf(books).slice(2)).toEqual(['e3 takenBack 2', 'e3 found 1', `e3 ${movement}`]);
  expect(flagsOf(books)).toEqual(['e3 took-more 1']);
  expect(books.balance).toBe(0);
});

test('a surplus that the missing explain is not flagged', () => {
  const books = booksOf([
    ['2025-01-10', say.stuck(6)],
    ['2025-02-10', say.counted(4)],
    ['2025-03-10', say.died(6)],
  ]);
  expect(flagsOf(books)).toEqual([]);
});

test.each<[what: string, lines: Line[], movements: string[], flags: string[]]>([
  ['nothing missing', [], ['e2 found 3'], ['e2 found-told 3']],
  [
    'some missing',
    [['2025-02-10', say.counted(4)]],
    ['e2 unaccounted 2', 'e3 takenBack 2', 'e3 found 1'],
    ['e3 found-told 1'],
  ],
  ['all missing', [['2025-02-10', say.counted(2)]], ['e2 unaccounted 4', 'e3 takenBack 3'], []],
])('a told find with %s', (_, before, movements, flags) => {
  const books = booksOf([['2025-01-10', say.stuck(6)], ...before, ['2025-03-10', say.found(3)]]);
  expect(movementsOf(books).slice(1)).toEqual(movements);
  expect(flagsOf(books)).toEqual(flags);
});

test('after a withdrawn opening every exit is a find flagged so, and the line stays', () => {
  const books = booksOf([
    ['2025-01-10', say.stuck(6)],
    ['2025-03-10', say.lifted(4)],
    ['2025-03-11', say.withdrawn('e1')],
    ['2025-03-12', say.counted(3)],
  ]);
  expect(movementsOf(books)).toEqual(['e2 found 4', 'e2 wentOn 4', 'e4 found 3']);
  expect(flagsOf(books)).toEqual(['e2 opening-withdrawn 4', 'e4 found-by-count 3']);
  expect(books).toMatchObject({ balance: 3, stays: [] });
});
