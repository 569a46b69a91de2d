import fc from 'fast-check';
import { expect, test } from 'vitest';
import { labelRun, positionRun, tagPlants } from './runs.ts';

test.each([
  ['T213…T215', ['T213', 'T214', 'T215']],
  ['T213..215', ['T213', 'T214', 'T215']],
  ['T008 - T011', ['T008', 'T009', 'T010', 'T011']],
  ['T1…T2, X9\nY1;Z', ['T1', 'T2', 'X9', 'Y1', 'Z']],
  ['CR-1/25-3', ['CR-1/25-3']],
  ['', []],
])('%j are the labels %j', (text, labels) => {
  expect(labelRun(text)).toEqual(labels);
});

test.each([
  ['2 x 3', ['r1 c1', 'r1 c2', 'r1 c3', 'r2 c1', 'r2 c2', 'r2 c3']],
  ['A1, A2\nB 1', ['A1', 'A2', 'B 1']],
  [' ', []],
])('%j are the positions %j', (text, positions) => {
  expect(positionRun(text)).toEqual(positions);
});

test('200 potted plants of three batches get T213…T412 and a grid of 10 by 20', () => {
  const tagged = tagPlants([{ batchId: 'a', n: 120 }, { batchId: 'b', n: 79 }, { batchId: 'c', n: 1 }], labelRun('T213…T412'), positionRun('10 x 20'));

  expect(tagged).toHaveLength(200);
  expect([tagged[0], tagged[119], tagged[120], tagged[199]]).toEqual([
    { batchId: 'a', label: 'T213', position: 'r1 c1' }, { batchId: 'a', label: 'T332', position: 'r6 c20' },
    { batchId: 'b', label: 'T333', position: 'r7 c1' }, { batchId: 'c', label: 'T412', position: 'r10 c20' },
  ]);
});

test('every plant gets one label, and none gets two', () => {
  fc.assert(
    fc.property(fc.array(fc.nat({ max: 30 }), { minLength: 1, maxLength: 10 }).filter((ns) => ns.some((n) => n > 0)), (ns) => {
      const parts = ns.map((n, at) => ({ batchId: `b${at}`, n }));
      const all = ns.reduce((sum, n) => sum + n, 0);
      const tagged = tagPlants(parts, labelRun(`T1…T${all}`), []);

      expect(new Set(tagged.map(({ label }) => label)).size).toBe(all);
      for (const { batchId, n } of parts) expect(tagged.filter((one) => one.batchId === batchId)).toHaveLength(n);
    }),
  );
});

test.each([
  ['planting/labels-do-not-run', () => labelRun('T1…X4')],
  ['planting/labels-do-not-run', () => labelRun('T9…T4')],
  ['planting/named-twice', () => labelRun('T1…T4, t3')],
  ['planting/named-twice', () => positionRun('A1, A1')],
  ['planting/too-many', () => labelRun('T1…T501')],
  ['planting/too-many', () => positionRun('30 x 30')],
  ['planting/no-plants', () => tagPlants([{ batchId: 'a', n: 0 }], [], [])],
  ['planting/not-as-many', () => tagPlants([{ batchId: 'a', n: 2 }], ['T1'], [])],
  ['planting/not-as-many', () => tagPlants([{ batchId: 'a', n: 1 }], ['T1'], ['r1 c1', 'r1 c2'])],
])('answers %s', (code, ask) => {
  expect(ask).toThrow(expect.objectContaining({ name: 'DomainError', code }));
});
