import { expect, test } from 'vitest';
import { openedCursor, sealedCursor } from './cursor.ts';

const LIST = '/api/v1/programmes/harrowdale/batches?stage=liner&state=alive';
const cursor = sealedCursor(['2026-03-01', 'an id'], LIST, 'secret');
const opened = (url: string, after = cursor, secret = 'secret'): unknown => JSON.parse(Buffer.from(openedCursor(after, url, secret), 'base64url').toString());

test('a cursor opens in the list that it was made for, whatever the order of filters and the length of the part', () => {
  expect(opened(LIST)).toEqual(['2026-03-01', 'an id']);
  expect(opened(`/api/v1/programmes/harrowdale/batches?state=alive&limit=7&after=x&stage=liner`)).toEqual(['2026-03-01', 'an id']);
});

test.each([
  ['another filter', LIST.replace('alive', 'empty')],
  ['a filter less', LIST.replace('&state=alive', '')],
  ['another list', LIST.replace('batches', 'trips')],
  ['another programme', LIST.replace('harrowdale', 'winterbeck')],
])('with %s it is refused', (_, url) => {
  expect(() => opened(url)).toThrow('with the same filters');
});

test('one that was made by somebody else is refused', () => {
  const forged = `${Buffer.from('["2020-01-01","an id"]').toString('base64url')}.${cursor.split('.')[1]}`;
  expect(() => opened(LIST, forged)).toThrow();
  expect(() => opened(LIST, cursor, 'other')).toThrow();
  expect(() => opened(LIST, '')).toThrow();
});
