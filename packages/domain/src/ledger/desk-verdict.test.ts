import { expect, test } from 'vitest';
import { entriesOf, type Line, TRAY } from '../../test/ledger/books-of.ts';
import * as say from '../../test/ledger/sayings.ts';
import { deskVerdict } from './desk-verdict.ts';
import { replay } from './replay.ts';

const STUCK: Line = ['2025-01-10', say.stuck(20)];

/** The verdict on the last of the lines. */
const verdictOn = (...lines: Line[]) => {
  const entries = entriesOf([STUCK, ...lines]);
  const asked = entries.at(-1)!.id;
  return deskVerdict(replay(TRAY, entries.slice(0, -1)), replay(TRAY, entries), [asked]);
};

test.each<[what: string, lines: Line[]]>([
  ['a death', [['2025-03-01', say.died(20)]]],
  ['a count that is short', [['2025-03-01', say.counted(3)]]],
  ['a count over, by what was missed before', [['2025-02-01', say.counted(18)], ['2025-03-01', say.counted(20)]]],
  ['another reading of the day', [['2025-03-01', say.counted(18)], ['2025-03-01', say.counted(19)]]],
  ['a find with its reason', [['2025-03-01', say.found(2)]]],
])('%s fits', (_, lines) => {
  expect(verdictOn(...lines)).toEqual({ verdict: 'fits', discrepancies: [] });
});

test.each<[what: string, lines: Line[], discrepancy: object]>([
  [
    'to take more than is there',
    [['2025-02-01', say.died(5)], ['2025-03-01', say.lifted(18)]],
    { code: 'took-more', entryId: 'e3', n: 3, there: 15 },
  ],
  ['to count more than is there', [['2025-03-01', say.counted(22)]], { code: 'found-by-count', n: 2, there: 20 }],
  [
    'to move what is held',
    [['2025-02-01', say.held()], ['2025-03-01', say.carried('bench 2')]],
    { code: 'held-moved', entryId: 'e3', there: 20 },
  ],
  [
    'to take from a batch whose opening was withdrawn',
    [['2025-02-01', say.withdrawn('e1')], ['2025-03-01', say.died(1)]],
    { code: 'opening-withdrawn', n: 1, there: 0 },
  ],
])('%s is refused, with the numbers', (_, lines, discrepancy) => {
  const { verdict, discrepancies } = verdictOn(...lines);
  expect(verdict).toBe('refused');
  expect(discrepancies).toEqual([expect.objectContaining(discrepancy)]);
});

test.each<[what: string, lines: Line[], discrepancy: object]>([
  [
    'to call the tray by a count of none',
    [['2025-02-01', say.lifted(15)], ['2025-02-02', say.counted(0)]],
    { code: 'called-by-count', n: 5, there: 5 },
  ],
  [
    'to list dead that are booked already',
    [['2025-03-01', say.counted(20, { dead: [say.dead(1, 'mould')] })]],
    { code: 'dead-beyond-shortfall', n: 1 },
  ],
  ['to speak of a day to come', [['2025-03-09', say.died(1), { receivedOn: '2025-03-01' }]], { code: 'day-in-future' }],
  [
    'what makes a later taking impossible',
    [['2025-03-01', say.lifted(18)], ['2025-02-01', say.died(5)]],
    { code: 'took-more', entryId: 'e2', n: 3, there: 15 },
  ],
])('%s is asked about', (_, lines, discrepancy) => {
  const { verdict, discrepancies } = verdictOn(...lines);
  expect(verdict).toBe('asked');
  expect(discrepancies).toEqual([expect.objectContaining(discrepancy)]);
});

test('what was impossible before is not the fault of who comes now, unless they make it worse', () => {
  const before: Line[] = [['2025-03-01', say.lifted(22)]];
  expect(verdictOn(...before, ['2025-03-02', say.found(1)])).toMatchObject({ verdict: 'fits' });
  expect(verdictOn(...before, ['2025-02-01', say.died(1)])).toMatchObject({
    verdict: 'asked',
    discrepancies: [{ code: 'took-more', entryId: 'e2', n: 3, there: 19 }],
  });
});

test('what cannot be is refused before anything is asked', () => {
  const { verdict, discrepancies } = verdictOn(
    ['2025-03-01', say.lifted(18)],
    ['2025-02-01', say.counted(25, { dead: [say.dead(1, 'mould')] })],
  );
  expect(verdict).toBe('refused');
  expect(discrepancies.map(({ code }) => code)).toEqual(['found-by-count']);
});
