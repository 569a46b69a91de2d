import { expect, test } from 'vitest';
import { type Counting, countingAfter, countingOf, type CountingStep } from './counting.ts';

const BLANK = countingOf({ look: 'tug', numbers: {}, dead: {} });
const after = (steps: readonly CountingStep[], from: Counting = BLANK): Counting => steps.reduce(countingAfter, from);
const keys = (...pressed: string[]): CountingStep[] => pressed.map((key) => ({ step: 'press', key }));
const to = (field: 'alive' | 'rooted'): CountingStep => ({ step: 'activate', active: { field } });
const toDead = (cause: string): CountingStep => ({ step: 'activate', active: { cause } });

test('keys write into the number that is marked, the living first; rubbed out it is blank, and blank is not nought', () => {
  expect(after(keys('1', '2')).numbers).toEqual({ alive: 12 });
  expect(after([...keys('1', '2'), to('rooted'), ...keys('7')]).numbers).toEqual({ alive: 12, rooted: 7 });
  expect(after(keys('1', '2', 'back')).numbers).toEqual({ alive: 1 });
  expect(after(keys('4', 'back')).numbers).toEqual({});
  expect(after(keys('0')).numbers).toEqual({ alive: 0 });
  expect(after([...keys('4'), to('rooted'), ...keys('2', 'clear')]).numbers).toEqual({ alive: 4 });
});

test('the dead are written by cause, beside the numbers', () => {
  const counted = after([...keys('9'), toDead('brown'), ...keys('2'), toDead('chewed'), ...keys('1', '0')]);
  expect(counted).toMatchObject({ numbers: { alive: 9 }, dead: { brown: 2, chewed: 10 } });
  expect(after(keys('clear'), counted).dead).toEqual({ brown: 2, chewed: 0 });
});

test('what a look cannot see is not kept, and the keys write into the living again', () => {
  const tugged = after([...keys('9'), to('rooted'), ...keys('5')]);
  expect(after([{ step: 'look', look: 'look', stage: 'cutting' }], tugged)).toMatchObject({ look: 'look', numbers: { alive: 9 }, active: { field: 'alive' } });
  expect(after([{ step: 'look', look: 'lifted', stage: 'cutting' }], tugged)).toMatchObject({ look: 'lifted', numbers: { alive: 9, rooted: 5 }, active: { field: 'rooted' } });
});

test('a slip is told until a key is tapped', () => {
  const wrong = after([{ step: 'slip', slip: 'aliveMissing' }]);
  expect(wrong.slip).toBe('aliveMissing');
  expect(after([to('rooted')], wrong).slip).toBe('aliveMissing');
  expect(after(keys('3'), wrong).slip).toBeUndefined();
});
