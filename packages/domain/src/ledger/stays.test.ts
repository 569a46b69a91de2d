import { expect, test } from 'vitest';
import { booksOf, type Line } from '../../test/ledger/books-of.ts';
import { carried, joined, splitOff, stuck, withdrawn } from '../../test/ledger/sayings.ts';

const OPENED: Line = ['2025-01-10', stuck(20)];
const FIRST_STAY = { placeId: 'bench 1', from: '2025-01-10', entryId: 'e1' };

test('a batch stands where it was opened until all of it is carried elsewhere', () => {
  const { stays, balance } = booksOf([OPENED, ['2025-03-01', carried('bench 2')], ['2025-02-01', carried('bench 3')]]);

  expect(stays).toEqual([
    FIRST_STAY,
    { placeId: 'bench 3', from: '2025-02-01', entryId: 'e3' },
    { placeId: 'bench 2', from: '2025-03-01', entryId: 'e2' },
  ]);
  expect(balance).toBe(20);
});

test('a split or a join carries plants, not the batch', () => {
  expect(booksOf([OPENED, ['2025-02-01', splitOff(5)], ['2025-02-02', joined(3)]]).stays).toEqual([FIRST_STAY]);
});

test('a batch whose opening is withdrawn stands nowhere until it is carried', () => {
  expect(booksOf([OPENED, ['2025-02-01', withdrawn('e1')]]).stays).toEqual([]);
});
