import { expect, test } from 'vitest';
import { booksOf, type Line } from '../../test/ledger/books-of.ts';
import * as say from '../../test/ledger/sayings.ts';

const OPENED = '2025-01-10';
const [FIRST, SECOND, LOSS] = ['2025-02-01', '2025-03-01', '2025-04-01'] as const;

test.each<[rule: string, lines: Line[], lastSeen: string]>([
  ['since the opening', [[LOSS, say.died(1)]], OPENED],
  ['since a look as strong', [[FIRST, say.counted(20)], [LOSS, say.died(1)]], FIRST],
  ['since a stronger look', [[FIRST, say.counted(20, { look: 'lifted' })], [LOSS, say.counted(19)]], FIRST],
  ['not since a weaker look', [[FIRST, say.counted(20)], [LOSS, say.counted(19, { look: 'tug' })]], OPENED],
  [
    'since the last strong enough of several',
    [
      [FIRST, say.counted(20, { look: 'tug' })],
      [SECOND, say.counted(20)],
      [LOSS, say.counted(19, { look: 'tug' })],
    ],
    FIRST,
  ],
  ['not since a sample', [[FIRST, say.counted(5, { sampleOf: 5 })], [LOSS, say.died(1)]], OPENED],
  ['not since somebody told of a death', [[FIRST, say.died(1)], [LOSS, say.died(1)]], OPENED],
  ['since a check that saw every tree', [[FIRST, say.checked(20)], [LOSS, say.died(1)]], FIRST],
  ['not since a check that missed one', [[FIRST, say.checked(19, { notFound: 1 })], [LOSS, say.died(1)]], OPENED],
  ['not since a check that left one out', [[FIRST, say.checked(19)], [LOSS, say.died(1)]], OPENED],
  ['throwing out is a look', [[FIRST, say.counted(20)], [LOSS, say.thrownOut(1)]], FIRST],
  ['calling is a look', [[FIRST, say.counted(20)], [LOSS, say.called(1)]], FIRST],
  [
    'since an earlier hour of the same day',
    [
      [LOSS, say.counted(20), { minute: 500 }],
      [LOSS, say.died(1), { minute: 600 }],
    ],
    LOSS,
  ],
  [
    'from before the first of two readings',
    [
      [FIRST, say.counted(20)],
      [LOSS, say.counted(19)],
      [LOSS, say.counted(18)],
    ],
    FIRST,
  ],
  [
    'since a reading that books nothing but agrees by a stronger look',
    [
      [FIRST, say.counted(20)],
      [FIRST, say.counted(20, { look: 'lifted' })],
      [LOSS, say.counted(19, { look: 'lifted' })],
    ],
    FIRST,
  ],
])('a loss lies %s', (_, lines, lastSeen) => {
  const { movements } = booksOf([[OPENED, say.stuck(20)], ...lines]);
  expect(movements.at(-1)).toMatchObject({ day: LOSS, lastSeen });
});

test('what goes on, moves or is given is no loss and lies nowhere', () => {
  const { movements } = booksOf([
    [OPENED, say.stuck(20)],
    [FIRST, say.lifted(3)],
    [FIRST, say.splitOff(3)],
    [FIRST, say.givenOut(3)],
  ]);
  expect(movements.filter(({ lastSeen }) => lastSeen !== undefined)).toEqual([]);
});

test('the books say when the whole batch was last seen, and how', () => {
  const opened: Line = [OPENED, say.stuck(20)];
  expect(booksOf([opened]).lastSeen).toEqual({ day: OPENED, look: 'lifted' });
  expect(booksOf([opened, [FIRST, say.counted(20, { look: 'tug' })]]).lastSeen).toEqual({ day: FIRST, look: 'tug' });
  expect(booksOf([opened, [FIRST, say.withdrawn('e1')]]).lastSeen).toBeUndefined();
});
