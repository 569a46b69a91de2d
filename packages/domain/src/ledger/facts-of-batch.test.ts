import { expect, test } from 'vitest';
import { booksOf, movementsOf } from '../../test/ledger/books-of.ts';
import * as say from '../../test/ledger/sayings.ts';
import type { Saying } from './entry.ts';
import { isOpening, touchedBatches } from './touched-batches.ts';

const ELSEWHERE = { openingEntryId: 'elsewhere' };

test.each<[saying: Saying, effect: string]>([
  [say.stuck(8), 'stuck'],
  [say.received(8), 'received'],
  [say.liftedIn(8), 'wentIn'],
  [say.joined(8), 'splitIn'],
  [say.restuck(8, 'source', 'tray'), 'restuckIn'],
  [say.givenIn(8), 'givenIn'],
  [say.mixed('tray', ['one', 5], ['two', 3]), 'mixedIn'],
  [say.identified(8, 'source', 'tray'), 'identifiedIn'],
])('%o brings plants in, and can open the batch', (saying, effect) => {
  const books = booksOf([['2025-01-10', saying]]);

  expect(movementsOf(books)).toEqual([`e1 ${effect} 8`]);
  expect(books).toMatchObject({ balance: 8, flags: [], lastSeen: { day: '2025-01-10', look: 'lifted' } });
  expect(isOpening(saying, 'tray')).toBe(true);
  expect(isOpening(saying, 'source')).toBe(false);
});

test.each<[saying: Saying, movement: string]>([
  [say.died(3), 'died 3 dried out'],
  [say.thrownOut(3), 'thrownOut 3 bent'],
  [say.called(3), 'notRooted 3'],
  [say.lifted(3), 'wentOn 3'],
  [say.potted(3), 'wentOn 3'],
  [say.planted(3), 'wentOn 3'],
  [say.splitOff(3), 'splitOut 3'],
  [say.restuck(3), 'restuckOut 3'],
  [say.givenOut(3), 'givenOut 3'],
  [say.givenOut(3, { toBatchId: 'theirs' }), 'givenAcross 3'],
  [say.mixed('mix', ['tray', 3], ['other', 4]), 'mixedOut 3'],
  [say.mixed('mix', ['tray', 2], ['other', 4], ['tray', 1]), 'mixedOut 3'],
  [say.identified(3), 'identifiedOut 3'],
])('%o takes three out, and opens nothing here', (saying, movement) => {
  const books = booksOf([
    ['2025-01-10', say.stuck(8)],
    ['2025-02-10', saying],
  ]);

  expect(movementsOf(books)).toEqual(['e1 stuck 8', `e2 ${movement}`]);
  expect(books).toMatchObject({ balance: 5, flags: [] });
  expect(isOpening(saying, 'tray')).toBe(false);
});

test.each([
  ['lifted', 'liner'],
  ['potted', 'potted'],
  ['planted', 'planted'],
] as const)('%s goes on to %s', (act, toStage) => {
  const books = booksOf([
    ['2025-01-10', say.stuck(8)],
    ['2025-02-10', say[act](3)],
  ]);

  expect(books.movements[1]).toEqual({ entryId: 'e2', day: '2025-02-10', effect: 'wentOn', n: 3, toStage });
});

test.each<[what: string, saying: Saying]>([
  ['a sample', say.counted(2, { sampleOf: 5, look: 'lifted', rooted: 2, dead: [say.dead(3, 'mould')] })],
  ['a treatment', { kind: 'treated', batchId: 'tray' }],
  ['a note', { kind: 'noted', batchId: 'tray' }],
  ['an incident', { kind: 'incident' }],
  ['a check of a whole plot', { kind: 'checked', alive: 3, dead: [], notFound: 1, notLooked: 0 }],
  ['what was said of another batch', { ...say.died(3), batchId: 'other' } as Saying],
])('%s moves nothing, sees nothing and tells nothing of roots', (_, saying) => {
  const opened = booksOf([['2025-01-10', say.stuck(8)]]);

  expect(
    booksOf([
      ['2025-01-10', say.stuck(8)],
      ['2025-02-10', saying],
    ]),
  ).toEqual({ ...opened, looks: expect.anything() });
});

test('a batch takes what another gives as it was stated, whatever the other had', () => {
  const lines = [['2025-02-10', say.liftedIn(8)]] as const;

  expect(booksOf(lines).balance).toBe(8);
  expect(movementsOf(booksOf(lines, { id: 'source', ...ELSEWHERE }))).toEqual(['e1 found 8', 'e1 wentOn 8']);
});

test.each<[saying: Saying, touched: string[]]>([
  [say.stuck(8), ['tray']],
  [say.lifted(3), ['tray', 'next']],
  [say.carried('bench 2'), ['tray']],
  [say.splitOff(3), ['tray', 'half']],
  [say.restuck(3), ['tray', 'second try']],
  [say.givenOut(3), ['tray']],
  [say.givenOut(3, { toBatchId: 'theirs' }), ['tray', 'theirs']],
  [say.mixed('mix', ['tray', 3], ['other', 4], ['tray', 1]), ['tray', 'other', 'mix']],
  [say.identified(3), ['tray', 'known']],
  [say.held(), ['tray']],
  [{ kind: 'held', batchIds: ['tray', 'other'] }, ['tray', 'other']],
  [{ kind: 'incident' }, []],
  [{ kind: 'noted' }, []],
  [say.withdrawn('e1'), []],
  [say.replaced('e1', '2025-01-10', say.lifted(3)), ['tray', 'next']],
])('%o touches %o', (saying, touched) => {
  expect(touchedBatches(saying)).toEqual(touched);
});
