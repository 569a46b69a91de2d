import type { Supply } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { pickLines } from './pick-lines.ts';

const supply = (batchId: string, numbers: Partial<Supply>): Supply => ({
  batchId, label: batchId, container: null, balance: 9, held: false, donorTree: null, stand: null, place: { id: 'p', name: 'Frame' }, path: ['Frame'],
  free: 9, reserved: 0, covered: 0, proposed: 0, ...numbers,
});

test('what is set aside and still there is taken, and nothing that was only proposed', () => {
  expect(pickLines([supply('A', { reserved: 3, covered: 2 }), supply('B', { proposed: 4 })])).toMatchObject({ lines: [{ batchId: 'A', n: 2 }], isProposed: false });
});

test('while nothing is set aside, what the pick proposes is shown as proposed', () => {
  expect(pickLines([supply('A', {}), supply('B', { proposed: 4 })])).toMatchObject({ lines: [{ batchId: 'B', n: 4 }], isProposed: true });
});

test('where nothing is proposed, nothing is called a proposal', () => {
  expect(pickLines([supply('A', {})])).toEqual({ lines: [], isProposed: false });
});
