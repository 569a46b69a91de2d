import { expect, test } from 'vitest';
import { doubtIn, itemKey, tickOf } from './item-key.ts';

const batch = { id: 'batch', label: null, stage: 'cutting' as const, donorLabel: null, placeName: null };

test('a tick tells which flag it is of, with or without a batch', () => {
  expect(doubtIn(tickOf('decision', { entryId: 'entry', batch, code: 'took-more' }))).toEqual([{ id: 'decision', entryId: 'entry', batchId: 'batch', code: 'took-more' }]);
  expect(doubtIn(tickOf('decision', { entryId: 'entry', batch: null, code: 'waiting' }))).toEqual([{ id: 'decision', entryId: 'entry', code: 'waiting' }]);
  expect(doubtIn('something')).toEqual([]);
  expect(itemKey({ entryId: 'entry', batch: null, code: 'waiting' })).toBe('entry..waiting');
});
