import { describe, expect, test } from 'vitest';
import { keptScanned, MOST_SCANNED, nothingScanned, putBack, withBatch, withoutBatch } from './scanned.ts';

const batch = (batchId: string) => ({ batchId, label: batchId, stage: 'potted' as const, what: 'D1', place: 'Bench 1', balance: 1, isHeld: false, entryId: `entry of ${batchId}`, toBatchId: `next of ${batchId}` });
const scanned = (...ids: readonly string[]) => ids.reduce((list, id) => withBatch(list, batch(id)), nothingScanned('list'));
const idsOf = ({ batches }: ReturnType<typeof scanned>) => batches.map(({ batchId }) => batchId);

describe('many scanned batches', () => {
  test('stand on the list once, the last one first', () => {
    expect(idsOf(scanned('a', 'b', 'a', 'c'))).toEqual(['c', 'b', 'a']);
  });

  test('are taken off and put back where they stood, with the ids that they had', () => {
    const list = withoutBatch(scanned('a', 'b', 'c'), 'b');

    expect(idsOf(list)).toEqual(['c', 'a']);
    expect(putBack(list).batches).toEqual(scanned('a', 'b', 'c').batches);
  });

  test('keep their place in the form when others leave, and a new one gets a place of its own', () => {
    const list = withBatch(withoutBatch(scanned('a', 'b', 'c'), 'c'), batch('d'));

    expect(list.batches.map(({ batchId, at }) => [batchId, at])).toEqual([['d', 3], ['b', 1], ['a', 0]]);
  });

  test('are not put back twice: scanned again meanwhile, or nothing taken off', () => {
    expect(idsOf(putBack(withBatch(withoutBatch(scanned('a', 'b'), 'a'), batch('a'))))).toEqual(['a', 'b']);
    expect(idsOf(putBack(scanned('a')))).toEqual(['a']);
    expect(idsOf(withoutBatch(scanned('a'), 'nobody'))).toEqual(['a']);
  });

  test(`are no more than ${MOST_SCANNED}`, () => {
    const all = scanned(...Array.from({ length: MOST_SCANNED + 3 }, (_, at) => String(at)));
    expect(all.batches).toHaveLength(MOST_SCANNED);
  });

  test('are read again from what the device kept, and nothing else is', () => {
    const list = scanned('a', 'b');

    expect(keptScanned(JSON.stringify(list))).toEqual(list);
    for (const other of [null, '', '{', 'null', '[]', '{"id":1}', '{"id":"list","next":0,"placeId":""}']) expect(keptScanned(other)).toBeUndefined();
  });
});
