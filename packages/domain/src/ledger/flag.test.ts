import { expect, test } from 'vitest';
import { booksOf, flagsOf, type Line } from '../../test/ledger/books-of.ts';
import * as say from '../../test/ledger/sayings.ts';
import type { FlagCode } from './books.ts';
import { FLAG_CODES } from './books.ts';

const STUCK: Line = ['2025-01-10', say.stuck(20)];
const DAY = '2025-03-01';

/** For each code the nearest thing that raises it and the nearest that does not. */
const NEAREST: Readonly<Record<FlagCode, readonly [raised: Line[], not: Line[]]>> = {
  'order-unknown': [[[DAY, say.counted(6)], [DAY, say.lifted(14)]], [[DAY, say.counted(20)], [DAY, say.lifted(14)]]],
  'called-by-count': [[[DAY, say.lifted(14, { leavesNone: true })]], [[DAY, say.lifted(20, { leavesNone: true })]]],
  'took-more': [[[DAY, say.died(21)]], [[DAY, say.died(20)]]],
  'found-by-count': [[[DAY, say.counted(21)]], [[DAY, say.counted(20)]]],
  'found-told': [[[DAY, say.found(1)]], [['2025-02-01', say.counted(19)], [DAY, say.found(1)]]],
  'two-readings': [[[DAY, say.counted(19)], [DAY, say.counted(18)]], [[DAY, say.counted(19)], [DAY, say.counted(19)]]],
  'dead-beyond-shortfall': [
    [[DAY, say.counted(19, { dead: [say.dead(2, 'mould')] })]],
    [[DAY, say.counted(18, { dead: [say.dead(2, 'mould')] })]],
  ],
  'rooted-fell': [
    [['2025-02-01', say.counted(20, { rooted: 9 })], [DAY, say.counted(20, { rooted: 8 })]],
    [['2025-02-01', say.counted(20, { rooted: 9 })], [DAY, say.counted(20, { rooted: 9 })]],
  ],
  'opening-withdrawn': [
    [[DAY, say.died(1)], [DAY, say.withdrawn('e1')]],
    [
      [DAY, say.died(1)],
      [DAY, say.withdrawn('e1')],
      [DAY, say.replaced('e1', STUCK[0], STUCK[1], { sawVersion: 'e3' })],
    ],
  ],
  'rival-correction': [
    [[DAY, say.died(1)], [DAY, say.withdrawn('e2')], [DAY, say.withdrawn('e2')]],
    [
      [DAY, say.died(1)],
      [DAY, say.withdrawn('e2')],
      [DAY, say.replaced('e2', DAY, say.died(1), { sawVersion: 'e3' })],
    ],
  ],
  'day-in-future': [
    [[DAY, say.died(1), { receivedOn: '2025-02-27' }]],
    [[DAY, say.died(1), { receivedOn: '2025-02-28' }]],
  ],
  'clock-unsure': [[[DAY, say.died(1), { clockUnsure: true }]], [[DAY, say.died(1), { clockUnsure: false }]]],
  'held-moved': [[[DAY, say.held()], [DAY, say.carried('bench 2')]], [[DAY, say.held()], [DAY, say.counted(20)]]],
  'not-found-twice': [
    [['2025-02-01', say.checked(19, { notFound: 1 })], [DAY, say.checked(19, { notFound: 1 })]],
    [['2025-02-01', say.checked(20)], [DAY, say.checked(19, { notFound: 1 })]],
  ],
  'author-unverified': [
    [[DAY, say.died(1), { authorUnverified: true }]],
    [[DAY, say.died(1), { authorUnverified: false }]],
  ],
  waiting: [
    [[DAY, say.died(1)], [DAY, say.replaced('e2', DAY, say.died(2), { sawVersion: 'e9' })]],
    [[DAY, say.died(1)], [DAY, say.replaced('e2', DAY, say.died(2))]],
  ],
};

test.each(FLAG_CODES)('%s is raised, and by the next best thing not', (code) => {
  const [raised, not] = NEAREST[code];
  const codesOf = (lines: Line[]): FlagCode[] => booksOf([STUCK, ...lines]).flags.map((flag) => flag.code);

  expect(codesOf(raised).filter((one) => one === code)).toEqual([code]);
  expect(codesOf(not)).not.toContain(code);
});

test('flags stand in the order of their entries, then of their codes', () => {
  const books = booksOf([
    STUCK,
    ['2025-04-01', say.died(30), { clockUnsure: true, receivedOn: '2025-03-01' }],
    ['2025-03-01', say.found(1)],
  ]);
  expect(flagsOf(books)).toEqual(['e3 found-told 1', 'e2 clock-unsure', 'e2 day-in-future', 'e2 took-more 9']);
});

test('a replacement is doubted for the day that it puts, as of the day when the entry came', () => {
  const replacing = booksOf([STUCK, [DAY, say.died(1)], ['2025-05-01', say.replaced('e2', '2025-04-20', say.died(1))]]);
  expect(replacing.flags).toEqual([{ code: 'day-in-future', entryId: 'e2', day: '2025-04-20' }]);
});
