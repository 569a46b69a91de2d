import { expect, test } from 'vitest';
import { booksOf, type Line } from '../../test/ledger/books-of.ts';
import * as say from '../../test/ledger/sayings.ts';
import type { Looks } from './looks.ts';

const [FIRST, SECOND, THIRD] = ['2025-02-01', '2025-03-01', '2025-04-01'] as const;

test.each<[rule: string, lines: Line[], looks: Looks]>([
  ['nobody has looked', [], {}],
  ['from above is no strong look', [[FIRST, say.counted(20)]], {}],
  ['by a tug, and lifted', [[FIRST, say.counted(20, { look: 'lifted' })], [SECOND, say.counted(20, { look: 'tug' })]], { strongOn: SECOND }],
  ['the last by its day, whenever it was told', [[SECOND, say.counted(20, { look: 'tug' })], [FIRST, say.counted(20, { look: 'tug' })]], { strongOn: SECOND }],
  ['a sample by a tug is both', [[FIRST, say.counted(4, { sampleOf: 4, look: 'tug' })], [SECOND, say.counted(3, { sampleOf: 4 })]], { strongOn: FIRST, sampledOn: SECOND }],
  ['looked over, with nothing to report or some dead', [[FIRST, { kind: 'noted', batchId: 'tray', lookedOver: true }], [SECOND, say.died(1)]], { lookedOverOn: SECOND }],
  ['a note of something else is no look', [[FIRST, { kind: 'noted', batchId: 'tray' }]], {}],
  ['a withdrawn one is none', [[FIRST, say.counted(20, { look: 'tug' })], [SECOND, say.withdrawn('e2')]], {}],
  ['a corrected one is of the day that it was corrected to', [[FIRST, say.counted(20)], [THIRD, say.replaced('e2', SECOND, say.counted(20, { look: 'tug' }))]], { strongOn: SECOND }],
  ['one of another tray is none', [[FIRST, { ...say.counted(20, { look: 'tug' }), batchId: 'other' } as Line[1]]], {}],
])('%s', (_, lines, looks) => {
  expect(booksOf([['2025-01-10', say.stuck(20)], ...lines]).looks).toEqual({ strongOn: undefined, sampledOn: undefined, lookedOverOn: undefined, ...looks });
});
