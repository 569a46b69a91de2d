import { expect, test } from 'vitest';
import { booksOf, flagsOf, type Line, movementsOf } from '../../test/ledger/books-of.ts';
import { checked, counted, dead, died, received } from '../../test/ledger/sayings.ts';

const PLANTED: Line = ['2025-03-01', received(20, { stage: 'planted' })];

interface Case {
  readonly rule: string;
  readonly lines: readonly Line[];
  readonly balance: number;
  readonly movements?: readonly string[];
  readonly flags?: readonly string[];
  readonly notFound?: number;
}

test.each<Case>([
  { rule: 'all alive', lines: [['2025-09-01', checked(20)]], balance: 20 },
  {
    rule: 'only dead is a loss, by its cause',
    lines: [['2025-09-01', checked(15, { dead: [dead(2, 'browsed'), dead(1, 'dried out')], notFound: 2 })]],
    balance: 17,
    movements: ['e2 died 2 browsed', 'e2 died 1 dried out'],
    notFound: 2,
  },
  { rule: 'what is in none of the four was not looked at', lines: [['2025-09-01', checked(3)]], balance: 20 },
  {
    rule: 'not found twice running becomes unaccounted; what is new stays apart',
    lines: [
      ['2025-09-01', checked(17, { notFound: 3 })],
      ['2026-09-01', checked(15, { notFound: 5 })],
    ],
    balance: 17,
    movements: ['e3 unaccounted 3'],
    flags: ['e3 not-found-twice 3'],
    notFound: 2,
  },
  {
    rule: 'found by the second check: nothing was lost',
    lines: [
      ['2025-09-01', checked(17, { notFound: 3 })],
      ['2026-09-01', checked(20)],
    ],
    balance: 20,
  },
  {
    rule: 'a check that looked at none is not the next check that looked',
    lines: [
      ['2025-09-01', checked(17, { notFound: 3 })],
      ['2026-03-01', checked(0, { notLooked: 20 })],
      ['2026-09-01', checked(17, { notFound: 3 })],
    ],
    balance: 17,
    movements: ['e4 unaccounted 3'],
    flags: ['e4 not-found-twice 3'],
  },
  {
    rule: 'seen after two misses: taken back',
    lines: [
      ['2025-09-01', checked(18, { notFound: 2 })],
      ['2026-09-01', checked(18, { notFound: 2 })],
      ['2027-09-01', checked(20)],
    ],
    balance: 20,
    movements: ['e3 unaccounted 2', 'e4 takenBack 2'],
    flags: ['e3 not-found-twice 2'],
  },
  {
    rule: 'more in the four than stand there: taken back, then found',
    lines: [
      ['2025-09-01', counted(19)],
      ['2026-09-01', checked(17, { dead: [dead(1, 'browsed')], notFound: 1, notLooked: 3 })],
    ],
    balance: 21,
    movements: ['e2 unaccounted 1', 'e3 takenBack 1', 'e3 found 2', 'e3 died 1 browsed'],
    flags: ['e3 found-by-count 2'],
    notFound: 1,
  },
  {
    rule: 'a whole count settles what was not found',
    lines: [
      ['2025-09-01', checked(17, { notFound: 3 })],
      ['2026-03-01', counted(18)],
      ['2026-09-01', checked(16, { notFound: 2 })],
    ],
    balance: 18,
    movements: ['e3 unaccounted 2'],
    notFound: 2,
  },
  {
    rule: 'no more are missed than are in stock',
    lines: [
      ['2025-09-01', checked(17, { notFound: 3 })],
      ['2026-03-01', died(19)],
    ],
    balance: 1,
    movements: ['e3 died 19 dried out'],
    notFound: 1,
  },
])('$rule', ({ lines, balance, movements = [], flags = [], notFound = 0 }) => {
  const books = booksOf([PLANTED, ...lines], { stage: 'planted' });
  expect(movementsOf(books).slice(1)).toEqual(movements);
  expect(flagsOf(books)).toEqual(flags);
  expect(books).toMatchObject({ balance, notFound });
});
