import { expect, test } from 'vitest';
import { onlyLiving } from './only-living.ts';

test('the plants of an empty batch are followed where all went the same way', () => {
  expect(onlyLiving([{ id: 'tree', balance: 1 }])).toBe('tree');
  // Potted on, and planted from there: through the pot.
  expect(onlyLiving([{ id: 'pot', balance: 0 }])).toBe('pot');
  expect(onlyLiving([{ id: 'pot', balance: 0 }, { id: 'tree', balance: 1 }])).toBe('tree');
});

test('and not where they went two ways, or none', () => {
  expect(onlyLiving([{ id: 'one', balance: 1 }, { id: 'other', balance: 1 }])).toBeUndefined();
  expect(onlyLiving([{ id: 'one', balance: 0 }, { id: 'other', balance: 0 }])).toBeUndefined();
  expect(onlyLiving([])).toBeUndefined();
});
