import { expect, test } from 'vitest';
import { booksOf, entriesOf, flagsOf, type Line, movementsOf } from '../../test/ledger/books-of.ts';
import { died, replaced, stuck, withdrawn } from '../../test/ledger/sayings.ts';
import { effectiveEntries, entriesAbout } from './effective-entries.ts';
import type { Saying } from './entry.ts';

const FIRST: Line[] = [
  ['2025-01-10', stuck(20)],
  ['2025-02-01', died(5)],
];
const ON = '2025-02-02';

test.each<[what: string, corrections: Line[], deaths: string[], flags: string[]]>([
  ['nothing corrected', [], ['e2 died 5'], []],
  ['withdrawn', [[ON, withdrawn('e2')]], [], []],
  ['replaced', [[ON, replaced('e2', '2025-02-01', died(3))]], ['e2 died 3'], []],
  [
    'replaced, and that replaced again',
    [
      [ON, replaced('e2', '2025-02-01', died(3))],
      [ON, replaced('e2', '2025-02-01', died(4), { sawVersion: 'e3' })],
    ],
    ['e2 died 4'],
    [],
  ],
  [
    'withdrawn, and brought back by a replacement that saw the withdrawal',
    [
      [ON, withdrawn('e2')],
      [ON, replaced('e2', '2025-02-01', died(5), { sawVersion: 'e3' })],
    ],
    ['e2 died 5'],
    [],
  ],
  [
    'corrected twice from the same version: the first in content order stands',
    [
      ['2025-02-04', replaced('e2', '2025-02-01', died(3))],
      ['2025-02-03', replaced('e2', '2025-02-01', died(4))],
    ],
    ['e2 died 4'],
    ['e3 rival-correction'],
  ],
  [
    'a rival that was corrected itself: neither stands, both are shown',
    [
      ['2025-02-03', replaced('e2', '2025-02-01', died(3))],
      ['2025-02-04', withdrawn('e2')],
      ['2025-02-05', replaced('e2', '2025-02-01', died(9), { sawVersion: 'e4' })],
    ],
    ['e2 died 3'],
    ['e4 rival-correction', 'e5 rival-correction'],
  ],
  ['a correction of a version that nobody knows', [[ON, withdrawn('e2', 'e77')]], ['e2 died 5'], ['e3 waiting']],
  ['a correction that saw a version of another entry', [[ON, withdrawn('e2', 'e1')]], ['e2 died 5'], ['e3 waiting']],
  [
    'a replacement of an entry that nobody knows',
    [[ON, replaced('e77', '2025-02-01', died(3))]],
    ['e2 died 5'],
    ['e3 waiting'],
  ],
  [
    'a correction by somebody who is no member',
    [[ON, withdrawn('e2'), { authorUnverified: true }]],
    ['e2 died 5'],
    ['e3 author-unverified'],
  ],
])('%s', (_, corrections, deaths, flags) => {
  const books = booksOf([...FIRST, ...corrections]);

  expect(movementsOf(books).filter((movement) => movement.includes(' died '))).toEqual(
    deaths.map((death) => `${death} dried out`),
  );
  expect(flagsOf(books)).toEqual(flags);
});

test('an entry by somebody who is no member stays out of the books until it is withdrawn', () => {
  const claimed: Line[] = [FIRST[0]!, ['2025-02-01', died(5), { authorUnverified: true }]];

  expect(booksOf(claimed)).toMatchObject({ balance: 20 });
  expect(flagsOf(booksOf(claimed))).toEqual(['e2 author-unverified']);
  expect(flagsOf(booksOf([...claimed, [ON, withdrawn('e2')]]))).toEqual([]);
});

test('a replacement keeps the id, the workday and the door, and brings its own day and minute', () => {
  const entries = entriesOf([
    FIRST[0]!,
    ['2025-02-01', died(5), { workdayId: 'w', line: 3, minute: 600 }],
    [ON, replaced('e2', '2025-01-30', died(4), { minute: 610 })],
  ]);

  expect(effectiveEntries(entries).effective).toEqual([
    entries[0],
    { ...entries[1], observedOn: '2025-01-30', minute: 610, saying: died(4) },
  ]);
});

test('a replacement may put an entry on another batch: each of the two has its books right', () => {
  const elsewhere = { ...died(5), batchId: 'other' } as Saying;
  const lines: Line[] = [...FIRST, [ON, replaced('e2', '2025-02-01', elsewhere)]];

  expect(booksOf(lines)).toMatchObject({ balance: 20, flags: [] });
  expect(movementsOf(booksOf(lines, { id: 'other' }))).toEqual(['e2 found 5', 'e2 died 5 dried out']);
});

test('everything about a batch is what names it in any version, with all its corrections', () => {
  const elsewhere = { ...died(5), batchId: 'other' } as Saying;
  const entries = entriesOf([
    ...FIRST,
    ['2025-02-01', elsewhere],
    [ON, replaced('e3', '2025-02-01', died(2))],
    [ON, withdrawn('e3', 'e4')],
    [ON, withdrawn('e77')],
  ]);

  expect(entriesAbout('tray', entries).map(({ id }) => id)).toEqual(['e1', 'e2', 'e3', 'e4', 'e5']);
  expect(entriesAbout('other', entries).map(({ id }) => id)).toEqual(['e3', 'e4', 'e5']);
});
