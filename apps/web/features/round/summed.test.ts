import { expect, test } from 'vitest';
import { summed } from './summed.ts';

test('what is booked for the same reason is told once, with its sum, in the order in which it was first booked', () => {
  const died = (cause: string, n: number) => ({ effect: 'died', cause, n });
  expect(summed([{ effect: 'tookBack', n: 1 }, died('black base', 2), { effect: 'tookBack', n: 3 }, died('chewed', 1), died('black base', 4)])).toEqual([
    { effect: 'tookBack', n: 4 }, died('black base', 6), died('chewed', 1),
  ]);
});

test('plants that went on to one stage and to another stay apart', () => {
  expect(summed([{ effect: 'gone', toStage: 'liner', n: 2 }, { effect: 'gone', toStage: 'potted', n: 5 }])).toHaveLength(2);
  expect(summed([])).toEqual([]);
});
