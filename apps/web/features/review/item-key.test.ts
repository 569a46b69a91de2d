import { expect, test } from 'vitest';
import { doubtOf, itemKey, tickName } from './item-key.ts';

const batch = { id: 'batch', label: null, stage: 'cutting' as const, donorLabel: null, placeName: null };

test('a tick tells which flag it is of, with or without a batch', () => {
  expect(doubtOf(tickName({ entryId: 'entry', batch, code: 'took-more' }), 'decision')).toEqual({ id: 'decision', entryId: 'entry', batchId: 'batch', code: 'took-more' });
  expect(doubtOf(tickName({ entryId: 'entry', batch: null, code: 'waiting' }), 'decision')).toEqual({ id: 'decision', entryId: 'entry', code: 'waiting' });
  expect(itemKey({ entryId: 'entry', batch: null, code: 'waiting' })).toBe('entry..waiting');
});

test.each([['note', 'counted again'], ['doubts/', 'decision'], ['doubts/entry', 'decision'], ['doubts/entry.batch.took-more', '']])('%s with the value %s is no tick', (name, value) => {
  expect(doubtOf(name, value)).toBeUndefined();
});
