import { describe, expect, test } from 'vitest';
import { booksOf, flagsOf, type Line, movementsOf } from '../../test/ledger/books-of.ts';
import { counted, dead, died, found, lifted, potted, stuck, thrownOut } from '../../test/ledger/sayings.ts';

const STUCK: Line = ['2025-01-10', stuck(20)];
const DAY = '2025-03-01';

interface Case {
  readonly rule: string;
  readonly lines: readonly Line[];
  readonly balance: number;
  /** After the opening. */
  readonly movements: readonly string[];
  readonly flags?: readonly string[];
}

const check = ({ lines, balance, movements, flags = [] }: Case): void => {
  const books = booksOf([STUCK, ...lines]);
  expect(movementsOf(books).slice(1)).toEqual(movements);
  expect(flagsOf(books)).toEqual(flags);
  expect(books.balance).toBe(balance);
};

describe('a count of the whole batch sets the books', () => {
  test.each<Case>([
    { rule: 'to what they held already', lines: [[DAY, counted(20)]], balance: 20, movements: [] },
    { rule: 'short, without a word', lines: [[DAY, counted(17)]], balance: 17, movements: ['e2 unaccounted 3'] },
    {
      rule: 'short, the dead of the list first and in its order',
      lines: [[DAY, counted(15, { dead: [dead(2, 'mould'), dead(1, 'dried out')] })]],
      balance: 15,
      movements: ['e2 died 2 mould', 'e2 died 1 dried out', 'e2 unaccounted 2'],
    },
    {
      rule: 'short of fewer than the list holds: the rest of the list is flagged, not subtracted',
      lines: [[DAY, counted(17, { dead: [dead(2, 'mould'), dead(4, 'insects')] })]],
      balance: 17,
      movements: ['e2 died 2 mould', 'e2 died 1 insects'],
      flags: ['e2 dead-beyond-shortfall 3'],
    },
    {
      rule: 'not twice by a death that was told before and is listed again',
      lines: [
        ['2025-02-20', died(2, 'mould')],
        [DAY, counted(18, { dead: [dead(2, 'mould')] })],
      ],
      balance: 18,
      movements: ['e2 died 2 mould'],
      flags: ['e3 dead-beyond-shortfall 2'],
    },
    {
      rule: 'over, as a flagged find',
      lines: [[DAY, counted(23)]],
      balance: 23,
      movements: ['e2 found 3'],
      flags: ['e2 found-by-count 3'],
    },
    {
      rule: 'over, taking back what earlier counts missed, newest first and however long ago',
      lines: [
        ['2025-02-01', counted(16)],
        ['2025-02-02', counted(15)],
        ['2027-02-03', counted(18)],
      ],
      balance: 18,
      movements: ['e2 unaccounted 4', 'e3 unaccounted 1', 'e4 takenBack 1', 'e4 takenBack 2'],
    },
    {
      rule: 'over, time and again, until all that was missed is taken back',
      lines: [
        ['2025-02-01', counted(16)],
        ['2025-02-02', counted(17)],
        ['2025-02-03', counted(20)],
      ],
      balance: 20,
      movements: ['e2 unaccounted 4', 'e3 takenBack 1', 'e4 takenBack 3'],
    },
    {
      rule: 'over by more than was missed: the rest is a find',
      lines: [
        ['2025-02-01', counted(18)],
        [DAY, counted(25)],
      ],
      balance: 25,
      movements: ['e2 unaccounted 2', 'e3 takenBack 2', 'e3 found 5'],
      flags: ['e3 found-by-count 5'],
    },
    {
      rule: 'over, but never taking back deaths, throwings out or what had not rooted',
      lines: [
        ['2025-02-01', died(2)],
        ['2025-02-02', thrownOut(1)],
        [DAY, counted(18)],
      ],
      balance: 18,
      movements: ['e2 died 2 dried out', 'e3 thrownOut 1 bent', 'e4 found 1'],
      flags: ['e4 found-by-count 1'],
    },
    {
      rule: 'each loss taken back once',
      lines: [
        ['2025-02-01', counted(18)],
        ['2025-02-02', counted(20)],
        ['2025-02-03', counted(21)],
      ],
      balance: 21,
      movements: ['e2 unaccounted 2', 'e3 takenBack 2', 'e4 found 1'],
      flags: ['e4 found-by-count 1'],
    },
  ])('$rule', check);

  test('a taking back names the loss that it undoes', () => {
    const { movements } = booksOf([STUCK, ['2025-02-01', counted(18)], [DAY, counted(20)]]);
    expect(movements[2]).toEqual({ entryId: 'e3', day: DAY, effect: 'takenBack', n: 2, undoes: 'e2' });
  });
});

describe('two counts of one day with nothing booked between are readings of one number', () => {
  test.each<Case>([
    {
      rule: 'equal ones are one reading: the first books, its list of dead alone counts',
      lines: [
        [DAY, counted(18), { minute: 600 }],
        [DAY, counted(18, { look: 'lifted', dead: [dead(2, 'mould')] }), { minute: 700 }],
      ],
      balance: 18,
      movements: ['e2 unaccounted 2'],
    },
    {
      rule: 'of differing ones the strongest look sets the books, though it came first',
      lines: [
        [DAY, counted(18, { look: 'tug', dead: [dead(2, 'mould')] })],
        [DAY, counted(15, { dead: [dead(5, 'insects')] })],
      ],
      balance: 18,
      movements: ['e2 died 2 mould'],
      flags: ['e2 two-readings'],
    },
    {
      rule: 'of equally strong ones the last in order sets the books',
      lines: [
        [DAY, counted(15)],
        [DAY, counted(18)],
      ],
      balance: 18,
      movements: ['e3 unaccounted 2'],
      flags: ['e3 two-readings'],
    },
    {
      rule: 'of three, two of them equal, one flag and one that books',
      lines: [
        [DAY, counted(18)],
        [DAY, counted(17, { look: 'tug' })],
        [DAY, counted(18)],
      ],
      balance: 17,
      movements: ['e3 unaccounted 3'],
      flags: ['e3 two-readings'],
    },
    {
      rule: 'a surplus of a reading that does not stand is not found',
      lines: [
        [DAY, counted(30)],
        [DAY, counted(19)],
      ],
      balance: 19,
      movements: ['e3 unaccounted 1'],
      flags: ['e3 two-readings'],
    },
    {
      rule: 'but not across a death',
      lines: [
        [DAY, counted(18), { minute: 500 }],
        [DAY, died(1), { minute: 600 }],
        [DAY, counted(17), { minute: 700 }],
      ],
      balance: 17,
      movements: ['e2 unaccounted 2', 'e3 died 1 dried out'],
    },
    {
      rule: 'nor across midnight',
      lines: [
        ['2025-02-28', counted(18)],
        [DAY, counted(17)],
      ],
      balance: 17,
      movements: ['e2 unaccounted 2', 'e3 unaccounted 1'],
    },
    {
      rule: 'a sample is no reading',
      lines: [
        [DAY, counted(18)],
        [DAY, counted(3, { look: 'lifted', sampleOf: 4 })],
      ],
      balance: 18,
      movements: ['e2 unaccounted 2'],
    },
  ])('$rule', check);
});

describe('a count of none', () => {
  const LIFT: Line = ['2025-10-01', lifted(12)];

  test.each<Case>([
    {
      rule: 'on the day of the lift calls the tray',
      lines: [
        ['2025-10-01', lifted(12), { minute: 600 }],
        ['2025-10-01', counted(0), { minute: 660 }],
      ],
      balance: 0,
      movements: ['e2 wentOn 12', 'e3 notRooted 8'],
      flags: ['e3 called-by-count 8'],
    },
    {
      rule: 'seven days after the lift calls it, and known roots are missed, not unrooted',
      lines: [
        ['2025-09-20', counted(20, { look: 'tug', rooted: 15 })],
        LIFT,
        ['2025-10-08', counted(0, { dead: [dead(1, 'mould')] })],
      ],
      balance: 0,
      movements: ['e3 wentOn 12', 'e4 died 1 mould', 'e4 unaccounted 3', 'e4 notRooted 4'],
      flags: ['e4 called-by-count 4'],
    },
    {
      rule: 'eight days after the lift is a count like any other',
      lines: [LIFT, ['2025-10-09', counted(0)]],
      balance: 0,
      movements: ['e2 wentOn 12', 'e3 unaccounted 8'],
    },
    {
      rule: 'before the lift is a count like any other',
      lines: [['2025-09-30', counted(0)], LIFT],
      balance: 0,
      movements: ['e2 unaccounted 20', 'e3 takenBack 12', 'e3 wentOn 12'],
    },
    {
      rule: 'after potting straight from the tray is a count like any other',
      lines: [
        ['2025-10-01', potted(12)],
        ['2025-10-02', counted(0)],
      ],
      balance: 0,
      movements: ['e2 wentOn 12', 'e3 unaccounted 8'],
    },
    {
      rule: 'of which the lift left none needs no flag',
      lines: [
        ['2025-10-01', lifted(20)],
        ['2025-10-02', counted(0)],
      ],
      balance: 0,
      movements: ['e2 wentOn 20'],
    },
    {
      rule: 'is made by a lift that leaves none, in its own name',
      lines: [['2025-10-01', lifted(12, { leavesNone: true })]],
      balance: 0,
      movements: ['e2 wentOn 12', 'e2 notRooted 8'],
      flags: ['e2 called-by-count 8'],
    },
    {
      rule: 'is made by potting that leaves none, but calls no tray',
      lines: [['2025-10-01', potted(12, { leavesNone: true })]],
      balance: 0,
      movements: ['e2 wentOn 12', 'e2 unaccounted 8'],
    },
    {
      rule: 'made by a lift can be overruled by a stronger reading of that day',
      lines: [
        ['2025-10-01', lifted(12, { leavesNone: true }), { minute: 600 }],
        ['2025-10-01', counted(3, { look: 'tug' }), { minute: 660 }],
      ],
      balance: 3,
      movements: ['e2 wentOn 12', 'e3 unaccounted 5'],
      flags: ['e3 two-readings'],
    },
    {
      rule: 'is not turned back by finds: what had not rooted stays over',
      lines: [LIFT, ['2025-10-02', counted(0)], ['2025-10-03', found(2)]],
      balance: 2,
      movements: ['e2 wentOn 12', 'e3 notRooted 8', 'e4 found 2'],
      flags: ['e3 called-by-count 8', 'e4 found-told 2'],
    },
  ])('$rule', check);

  test('says when the tray was called, though nothing was left to call', () => {
    expect(booksOf([STUCK, ['2025-10-01', lifted(20)], ['2025-10-02', counted(0)]]).calledOn).toBe('2025-10-02');
    expect(booksOf([STUCK, ['2025-10-01', lifted(12)], ['2025-10-09', counted(0)]]).calledOn).toBeUndefined();
  });

  test('of liners calls nothing, even on the day that they were lifted', () => {
    const books = booksOf([STUCK, LIFT, ['2025-10-02', counted(0)]], { stage: 'liner' });
    expect(movementsOf(books)).toEqual(['e1 stuck 20', 'e2 wentOn 12', 'e3 unaccounted 8']);
  });
});
