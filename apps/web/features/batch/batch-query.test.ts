import { expect, test } from 'vitest';
import { addressOf, askedOf, queryOf } from './batch-query.ts';

test('asks for batches with plants until something else is said', () => {
  expect(askedOf({})).toEqual({ state: 'alive' });
  expect(askedOf({ state: '', stage: 'potted' })).toEqual({ stage: 'potted' });
  expect(queryOf(askedOf({ state: 'empty', label: 'T1' }))).toBe('state=empty');
});

test('the next part is asked for with the same filters, "all" included', () => {
  expect(addressOf(askedOf({ state: '', stage: 'liner' }), 'x')).toBe('?state=&stage=liner&after=x');
  expect(askedOf({ state: '', stage: 'liner', after: 'x' })).toEqual({ stage: 'liner' });
});
