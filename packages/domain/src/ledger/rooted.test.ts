import { expect, test } from 'vitest';
import { booksOf, flagsOf, type Line } from '../../test/ledger/books-of.ts';
import * as say from '../../test/ledger/sayings.ts';

const STUCK: Line = ['2025-01-10', say.stuck(30)];
const [FIRST, SECOND, THIRD] = ['2025-06-01', '2025-07-01', '2025-08-01'] as const;

test.each<[rule: string, lines: Line[], now: number | undefined, ever: number]>([
  ['nobody told: blank is not 0', [], undefined, 0],
  ['nobody told at a count', [[FIRST, say.counted(30)]], undefined, 0],
  ['a look told', [[FIRST, say.counted(30, { rooted: 12 })]], 12, 12],
  ['none is 0, not blank', [[FIRST, say.counted(30, { rooted: 0 })]], 0, 0],
  [
    'a later look told more',
    [
      [FIRST, say.counted(30, { rooted: 12 })],
      [SECOND, say.counted(30, { rooted: 15 })],
    ],
    15,
    15,
  ],
  ['a later count left it blank', [[FIRST, say.counted(30, { rooted: 12 })], [SECOND, say.counted(30)]], 12, 12],
  ['no more than are there', [[FIRST, say.counted(30, { rooted: 12 })], [SECOND, say.counted(7)]], 7, 12],
  ['a sample tells nothing', [[FIRST, say.counted(5, { sampleOf: 5, rooted: 5 })]], undefined, 0],
  ['going on since the look', [[FIRST, say.counted(30, { rooted: 12 })], [SECOND, say.lifted(10)]], 2, 12],
  ['going on implies roots', [[SECOND, say.lifted(10)]], undefined, 10],
  ['more went on than were seen', [[FIRST, say.counted(30, { rooted: 12 })], [SECOND, say.lifted(14)]], 0, 14],
  [
    'ever rooted counts those that went on',
    [
      [FIRST, say.counted(30, { rooted: 12 })],
      [SECOND, say.lifted(10)],
      [THIRD, say.counted(20, { rooted: 5 })],
    ],
    5,
    15,
  ],
  ['a join that states its roots', [[FIRST, say.counted(30, { rooted: 12 })], [SECOND, say.joined(5, 4)]], 16, 16],
  ['a join that does not', [[FIRST, say.counted(30, { rooted: 12 })], [SECOND, say.joined(5)]], undefined, 12],
  ['a split that states its roots', [[FIRST, say.counted(30, { rooted: 12 })], [SECOND, say.splitOff(5, 4)]], 8, 12],
  ['a split that does not', [[FIRST, say.counted(30, { rooted: 12 })], [SECOND, say.splitOff(5)]], undefined, 12],
  ['a gift that does not', [[FIRST, say.counted(30, { rooted: 12 })], [SECOND, say.givenOut(5)]], undefined, 12],
  ['cut afresh, and so unrooted', [[FIRST, say.counted(30, { rooted: 12 })], [SECOND, say.restuck(5)]], 12, 12],
  [
    'unknown until the next look',
    [
      [FIRST, say.counted(30, { rooted: 12 })],
      [SECOND, say.splitOff(5)],
      [THIRD, say.counted(25, { rooted: 12 })],
    ],
    12,
    12,
  ],
  [
    'the strongest of equal readings tells',
    [
      [FIRST, say.counted(30, { look: 'tug', rooted: 12 })],
      [FIRST, say.counted(30, { rooted: 9 })],
    ],
    12,
    12,
  ],
  [
    'an equal reading that told, beside a stronger that did not',
    [
      [FIRST, say.counted(30, { look: 'tug' })],
      [FIRST, say.counted(30, { rooted: 9 })],
    ],
    9,
    9,
  ],
  [
    'a reading that does not stand tells nothing',
    [
      [FIRST, say.counted(29, { rooted: 9 })],
      [FIRST, say.counted(30, { look: 'tug' })],
    ],
    undefined,
    0,
  ],
])('%s', (_, lines, now, ever) => {
  const { rooted, flags } = booksOf([STUCK, ...lines]);
  expect(rooted.now).toBe(now);
  expect(rooted.ever).toBe(ever);
  expect(flags.filter(({ code }) => code === 'rooted-fell')).toEqual([]);
});

test('a fall books nothing, is flagged, and nobody knows how many are rooted', () => {
  const books = booksOf([
    STUCK,
    [FIRST, say.counted(30, { rooted: 12 })],
    [SECOND, say.lifted(5)],
    [THIRD, say.counted(25, { rooted: 6 })],
  ]);
  expect(books.rooted).toEqual({ ever: 12 });
  expect(books.balance).toBe(25);
  expect(flagsOf(books)).toEqual(['e4 rooted-fell']);
});

test('an opening may state its roots, and counts as the strongest look', () => {
  const stated = booksOf([['2025-01-10', say.received(30, { rooted: 8 })]]);
  expect(stated.rooted).toEqual({ now: 8, ever: 8, look: 'lifted', seenOn: '2025-01-10' });
  expect(booksOf([['2025-01-10', say.received(30)]]).rooted).toEqual({ ever: 0 });
});

test('the look that told carries its strength and its day', () => {
  const { rooted } = booksOf([STUCK, [FIRST, say.counted(30, { look: 'tug', rooted: 12 })]]);
  expect(rooted).toEqual({ now: 12, ever: 12, look: 'tug', seenOn: FIRST });
});

test.each(['liner', 'potted', 'planted'] as const)('at stage %s nobody is asked: all of them have roots', (stage) => {
  const lines: Line[] = [STUCK, [FIRST, say.counted(28, { rooted: 3 })], [SECOND, say.counted(27, { rooted: 2 })]];
  const books = booksOf(lines, { stage });
  expect(books.rooted.now).toBe(27);
  expect(flagsOf(books)).toEqual([]);
});
