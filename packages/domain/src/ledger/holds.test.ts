import { expect, test } from 'vitest';
import { booksOf, flagsOf, type Line } from '../../test/ledger/books-of.ts';
import * as say from '../../test/ledger/sayings.ts';
import type { Saying } from './entry.ts';

const STUCK: Line = ['2025-01-10', say.stuck(20)];
const HELD: Line = ['2025-02-01', say.held()];
const heldMoved = (lines: readonly Line[]): string[] => flagsOf(booksOf(lines)).filter((flag) => flag.includes('held'));

const FORBIDDEN: Saying[] = [
  say.lifted(3),
  say.potted(3),
  say.planted(3),
  say.carried('bench 2'),
  say.splitOff(3),
  say.givenOut(3),
  say.givenOut(3, { toBatchId: 'theirs' }),
];

test.each(FORBIDDEN)('%o is flagged while held, booked all the same, and free once released', (saying) => {
  const books = booksOf([STUCK, HELD, ['2025-02-02', saying]]);
  expect(flagsOf(books)).toEqual(['e3 held-moved']);
  expect(books.heldBy).toEqual(['e2']);

  const freed = booksOf([STUCK, HELD, ['2025-02-02', say.released()], ['2025-02-03', saying]]);
  expect(flagsOf(freed)).toEqual([]);
  expect(freed.heldBy).toEqual([]);
  expect(freed.movements.filter(({ effect }) => effect !== 'stuck').map(({ n }) => n)).toEqual(
    books.movements.filter(({ effect }) => effect !== 'stuck').map(({ n }) => n),
  );
});

test.each<Saying>([say.died(3), say.counted(19), say.thrownOut(3), say.called(3), say.joined(3), say.found(1)])(
  '%o may happen to held plants',
  (saying) => {
    expect(heldMoved([STUCK, HELD, ['2025-02-02', saying]])).toEqual([]);
  },
);

test('what left on the day of the hold left too late, what left with a minute before it did not', () => {
  expect(heldMoved([STUCK, HELD, ['2025-02-01', say.lifted(3)]])).toEqual(['e3 held-moved']);
  expect(
    heldMoved([STUCK, ['2025-02-01', say.held(), { minute: 700 }], ['2025-02-01', say.lifted(3), { minute: 600 }]]),
  ).toEqual([]);
});

test('a return arrives held, other arrivals do not', () => {
  expect(booksOf([['2025-01-10', say.received(5, { source: 'return' })]]).heldBy).toEqual(['e1']);
  expect(booksOf([['2025-01-10', say.received(5, { source: 'purchase' })]]).heldBy).toEqual([]);
});

test('who is held for two reasons stays held until the second ends as well; a release that names none ends both', () => {
  const twice: Line[] = [STUCK, HELD, ['2025-02-02', say.held()]];
  const one = booksOf([...twice, ['2025-02-03', say.released('e3')], ['2025-02-04', say.lifted(3)]]);
  expect(one.heldBy).toEqual(['e2']);
  expect(flagsOf(one)).toEqual(['e5 held-moved']);
  expect(booksOf([...twice, ['2025-02-03', say.released('e3')], ['2025-02-04', say.released('e2')]]).heldBy).toEqual([]);
  expect(booksOf([...twice, ['2025-02-03', say.released()]]).heldBy).toEqual([]);
  expect(booksOf([...twice, ['2025-02-03', say.released('another batch’s')]]).heldBy).toEqual(['e2', 'e3']);
});

test('a hold may name every batch that it reaches', () => {
  const reaching: Saying = { kind: 'held', batchIds: ['other', 'tray'] };
  expect(booksOf([STUCK, ['2025-02-01', reaching]]).heldBy).toEqual(['e2']);
});

test('plants given within the programme are unconfirmed until somebody counts them there', () => {
  const given: Line = ['2025-01-10', say.givenIn(8)];
  expect(booksOf([given]).unconfirmed).toBe(true);
  expect(booksOf([given, ['2025-02-01', say.counted(4, { sampleOf: 4 })]]).unconfirmed).toBe(true);
  expect(booksOf([given, ['2025-02-01', say.counted(8)]]).unconfirmed).toBe(false);
});
