import { expect, test } from 'vitest';
import { fieldFallback, keptFor } from './what-is-kept.ts';

const kept = { origin: 'https://nursery.example', shell: '/field', assets: ['/_next/static/chunks/a.js'] };
const at = (path: string) => new URL(path, 'https://nursery.example');

test.each([
  ['/field', 'GET', '/field'],
  ['/field?source=home-screen', 'GET', '/field'],
  ['/_next/static/chunks/a.js', 'GET', '/_next/static/chunks/a.js'],
  ['/_next/static/chunks/b.js', 'GET', undefined],
  ['/api/v1/me', 'GET', undefined],
  ['/programmes/harrowdale', 'GET', undefined],
  ['/field', 'POST', undefined],
  ['https://elsewhere.example/field', 'GET', undefined],
])('%s by %s', (path, method, answer) => {
  expect(keptFor(at(path), method, kept)).toBe(answer);
});

test('without a signal a printed list leads to a walk along its lines', () => {
  for (const page of ['', '/type']) expect(fieldFallback(at(`/programmes/harrowdale/work-lists/abc${page}`), '/field')).toBe('https://nursery.example/field#/harrowdale/list/abc');
  for (const page of ['', '/new', '/abc/pdf']) expect(fieldFallback(at(`/programmes/harrowdale/work-lists${page}`), '/field')).toBe('https://nursery.example/field');
});

test('without a signal a round leads to the same round, anything else to what is on the phone', () => {
  expect(fieldFallback(at('/programmes/harrowdale/places/abc/round'), '/field')).toBe('https://nursery.example/field#/harrowdale/round/abc');
  expect(fieldFallback(at('/programmes/harrowdale/places/abc'), '/field')).toBe('https://nursery.example/field');
});
