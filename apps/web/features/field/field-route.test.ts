import { expect, test } from 'vitest';
import { fieldAddress } from '../../lib/field-address.ts';
import { routeIn } from './field-route.ts';

test.each([
  ['', { screen: 'home' }],
  ['#', { screen: 'home' }],
  ['#/outbox', { screen: 'outbox' }],
  ['#/harrowdale', { screen: 'home', programme: 'harrowdale' }],
  ['#/harrowdale/pack', { screen: 'pack', programme: 'harrowdale' }],
  ['#/harrowdale/trip', { screen: 'trip', programme: 'harrowdale' }],
  ['#/harrowdale/round/abc', { screen: 'round', programme: 'harrowdale', id: 'abc' }],
  ['#/harrowdale/list/abc', { screen: 'list', programme: 'harrowdale', id: 'abc' }],
  ['#/harrowdale/stick', { screen: 'stick', programme: 'harrowdale' }],
  ['#/harrowdale/note/abc', { screen: 'note', programme: 'harrowdale', id: 'abc' }],
  ['#/harrowdale/batch/abc/def', { screen: 'batch', programme: 'harrowdale', id: 'abc', batchId: 'def' }],
  ['#/harrowdale/batch/abc/def/K58Y9J69', { screen: 'batch', programme: 'harrowdale', id: 'abc', batchId: 'def', label: 'K58Y9J69' }],
  ['#/harrowdale/round/abc/def', { screen: 'round', programme: 'harrowdale', id: 'abc', batchId: 'def' }],
  ['#/harrowdale/scan', { screen: 'scan', programme: 'harrowdale' }],
  ['#/harrowdale/scan/abc', { screen: 'scan', programme: 'harrowdale', id: 'abc' }],
  ['#/harrowdale/claim/K58Y9J69/abc', { screen: 'claim', programme: 'harrowdale', id: 'K58Y9J69', walkId: 'abc' }],
  ['#/harrowdale/claim', { screen: 'home', programme: 'harrowdale' }],
  ['#/harrowdale/batch/abc', { screen: 'home', programme: 'harrowdale' }],
  ['#/harrowdale/round', { screen: 'home', programme: 'harrowdale' }],
  ['#/%zz/round/abc', { screen: 'home' }],
])('%s leads to its screen', (hash, route) => {
  expect(routeIn(hash)).toEqual(route);
});

test('what an address says is read back', () => {
  const address = fieldAddress('harrowdale', 'round', 'a/b');
  expect(routeIn(address.slice(address.indexOf('#')))).toEqual({ screen: 'round', programme: 'harrowdale', id: 'a/b' });
  expect(fieldAddress()).toBe('/field');
});
