import { expect, test } from 'vitest';
import { partnersAct } from './partners-act.ts';

test('a partner checks trees at their site and counts plants in their hands, and nothing that stands elsewhere or is gone', () => {
  expect(partnersAct({ relations: ['site', 'stand'], balance: 3 })).toBe('check');
  expect(partnersAct({ relations: ['hands'], balance: 3 })).toBe('count');
  expect(partnersAct({ relations: ['stand'], balance: 3 })).toBeUndefined();
  expect(partnersAct({ relations: [], balance: 3 })).toBeUndefined();
  expect(partnersAct({ relations: ['site'], balance: 0 })).toBeUndefined();
});
