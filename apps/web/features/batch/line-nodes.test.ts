import type { Batch } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { lineOf } from './line-nodes.ts';

const link = (id: string, stage: 'cutting' | 'liner' | 'planted', balance: number) => ({ id, label: id.toUpperCase(), stage, openedOn: '2025-10-01', balance, place: { id: 'p', name: 'Bench 1' } });
const batch = {
  ...link('t2', 'liner', 4),
  line: {
    stand: { id: 's', name: 'Corran Ridge' }, donorTree: { id: 'd', label: 'CR-01' }, candidates: [],
    trip: { id: 'r', wentOn: '2025-09-30' }, bundle: { id: 'b', cuttings: 24, shoot: null, foliage: null, base: null },
    sticking: { id: 'k', stuckOn: '2025-10-01', generation: 1, secondTryOfId: null, fromBatchId: null, recipe: { versionId: 'v', name: 'Heel', version: 1 } },
    ancestors: [link('t1', 'cutting', 0)], parts: [], children: [link('t3', 'planted', 2)],
  },
} as unknown as Batch;

test('the line goes from the stand by tree, trip, sticking and ancestors to the batch, then to what came of it', () => {
  const { trunk, children } = lineOf(batch);
  expect(trunk.map(({ kind }) => kind)).toEqual(['stand', 'donorTree', 'trip', 'sticking', 'batch', 'batch']);
  expect(trunk.at(-1)).toMatchObject({ isHere: true, label: 'T2', plants: 4, place: 'Bench 1' });
  expect(trunk.at(-2)).toMatchObject({ isHere: false, label: 'T1' });
  expect(children.map(({ label }) => label)).toEqual(['T3']);
});

test('while the donor tree is not known, those that it may be stand in its place', () => {
  const unsure = { ...batch, line: { ...batch.line, donorTree: null, candidates: [{ id: 'd', label: 'CR-01' }, { id: 'e', label: 'CR-02' }] } };
  expect(lineOf(unsure).trunk[1]).toEqual({ kind: 'candidates', labels: ['CR-01', 'CR-02'] });
});
