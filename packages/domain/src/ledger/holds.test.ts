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

test('plants carried to where they stand apart and held there in one act have not come too late: its lines say so', () => {
  const day = '2025-02-01';
  const act = (moved: object, hold: object): string[] =>
    heldMoved([STUCK, [day, say.carried('bench 2'), moved], [day, say.held(), hold]]);
  expect(act({ line: 1 }, { line: 2 })).toEqual([]);
  expect(act({ line: 1, minute: 600 }, { line: 2, minute: 600 })).toEqual([]);
  expect(act({ line: 1, workdayId: 'w' }, { line: 2, workdayId: 'w' })).toEqual([]);

  expect(act({ line: 2 }, { line: 1 })).toEqual(['e2 held-moved']);
  expect(act({}, { line: 1 })).toEqual(['e2 held-moved']);
  expect(act({ line: 1 }, {})).toEqual(['e2 held-moved']);
  expect(act({ line: 1, workdayId: 'w' }, { line: 2, workdayId: 'x' })).toEqual(['e2 held-moved']);
  expect(act({ line: 1, minute: 700 }, { line: 2, minute: 600 })).toEqual(['e2 held-moved']);
  expect(heldMoved([STUCK, ['2025-01-31', say.held()], [day, say.carried('bench 2'), { line: 1 }], [day, say.held(), { line: 2 }]])).toEqual(['e3 held-moved']);
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
