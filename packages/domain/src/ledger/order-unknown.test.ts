import { describe, expect, test } from 'vitest';
import { booksOf, flagsOf, type Line } from '../../test/ledger/books-of.ts';
import * as say from '../../test/ledger/sayings.ts';
import type { Saying } from './entry.ts';

const STUCK: Line = ['2025-01-10', say.stuck(20)];
const DAY = '2025-03-01';
const on = (...sayings: Saying[]): Line[] => [STUCK, ...sayings.map((saying): Line => [DAY, saying])];
const orderFlags = (lines: readonly Line[]): string[] =>
  flagsOf(booksOf(lines)).filter((flag) => flag.includes('order'));

describe('a day whose order nobody told is flagged once, at its last entry, if another order closes', () => {
  test.each<[what: string, lines: Line[]]>([
    ['counted what was there before some died', on(say.died(2), say.counted(20))],
    ['counted what was left after a lift', on(say.counted(6), say.lifted(14))],
    ['two lifts around a count', on(say.counted(12), say.lifted(8), say.lifted(4))],
    ['threw out after the lift, and counted last', on(say.counted(0), say.thrownOut(6), say.lifted(14))],
  ])('%s', (_, lines) => {
    expect(orderFlags(lines)).toEqual([`e${lines.length} order-unknown`]);
  });

  test('also where only the last of many orders closes', () => {
    const lines = on(say.counted(14), say.counted(9), say.lifted(5), say.splitOff(4), say.givenOut(2));
    expect(orderFlags(lines)).toEqual(['e6 order-unknown']);
  });
});

describe('a day is not flagged', () => {
  test.each<[what: string, lines: Line[]]>([
    ['when it closes as it stands', on(say.died(2), say.counted(18), say.lifted(14))],
    ['when no other order closes it', on(say.died(2), say.counted(15))],
    ['when only a told find is over', on(say.found(2), say.counted(22))],
    ['when only fresh losses of a verdict are at stake', on(say.lifted(14, { leavesNone: true }))],
    ['when plants are missing at one lone count', on(say.counted(6))],
  ])('%s', (_, lines) => {
    expect(orderFlags(lines)).toEqual([]);
  });

  test('when the minutes are known', () => {
    const lines: Line[] = [STUCK, [DAY, say.counted(6), { minute: 600 }], [DAY, say.lifted(14), { minute: 700 }]];
    expect(orderFlags(lines)).toEqual([]);
  });

  test('when the gap lies at a fact with a minute, which keeps its place', () => {
    const lines: Line[] = [STUCK, [DAY, say.counted(6), { minute: 600 }], [DAY, say.lifted(6)]];
    expect(orderFlags(lines)).toEqual([]);
  });

  test('when the other fact is of another day', () => {
    expect(orderFlags([STUCK, [DAY, say.counted(6)], ['2025-03-02', say.lifted(14)]])).toEqual([]);
  });
});

test('the minute of a clock that was off does not tell the order', () => {
  const off = { clockUnsure: true };
  const lines: Line[] = [
    STUCK,
    [DAY, say.counted(6), { minute: 600, ...off }],
    [DAY, say.lifted(14), { minute: 700, ...off }],
  ];
  expect(orderFlags(lines)).toEqual(['e3 order-unknown']);
});

test('a count that books more in another order may still be set right there by a stronger reading', () => {
  // Ours: 1 died, both counts see 20: one too many. Counted first, the weak 15 gives way to the lifted 20.
  const lines = on(say.died(1), say.counted(15), say.counted(20, { look: 'lifted' }));
  expect(orderFlags(lines)).toEqual(['e4 order-unknown']);
});

test('two readings that agree may explain the gap in one order of them and not in the other', () => {
  // Ours books the count that names no dead. The other way round the two dead close the day, then three leave.
  const named = say.counted(18, { look: 'lifted', dead: [say.dead(2, 'mould')] });
  expect(orderFlags(on(say.counted(18), named, say.thrownOut(3)))).toEqual(['e4 order-unknown']);
});

test('twelve facts are tried in every order; a thirteenth leaves only the suspicion', () => {
  const deaths = (n: number) => Array.from({ length: n }, () => say.died(1));

  expect(orderFlags(on(...deaths(11), say.counted(8)))).toEqual([]);
  expect(orderFlags(on(...deaths(12), say.counted(7)))).toEqual(['e14 order-unknown']);
  expect(orderFlags(on(...deaths(12), say.counted(8)))).toEqual([]);
});
