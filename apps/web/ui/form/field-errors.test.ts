import { expect, test } from 'vitest';
import { fieldErrors, strayErrors } from './field-errors.ts';

const labels = { name: 'Name', 'exactPlace/latitude': 'Latitude', bundles: 'Bundles' };

function problem(pointer: string, detail: string) {
  return { type: '/problems/http/unfit-request', title: 'The request does not fit', status: 422, errors: [{ pointer, detail }] };
}

test('a sentence stands beside the field that it is about', () => {
  expect(fieldErrors(problem('#/name', 'must not be empty'), labels, 'needs an answer')).toEqual({ name: 'Name must not be empty.' });
});

test('a field within a thing is found by its whole path', () => {
  expect(fieldErrors(problem('#/exactPlace/latitude', 'must be at most 90'), labels, '')).toEqual({ 'exactPlace/latitude': 'Latitude must be at most 90.' });
});

test('a part without a field marks the field above it', () => {
  expect(fieldErrors(problem('#/bundles/2/cuttings', 'must be at least 1'), labels, '')).toEqual({ bundles: 'Bundles must be at least 1.' });
});

test('what was left out is said in words of ours', () => {
  expect(fieldErrors(problem('#/name', 'Invalid input: expected string, received undefined'), labels, 'needs an answer')).toEqual({ name: 'Name needs an answer.' });
});

test('what no field shows is still said', () => {
  expect(fieldErrors(problem('#', 'two trips on one day'), labels, '')).toEqual({});
  expect(strayErrors(problem('#', 'two trips on one day'), labels)).toEqual(['two trips on one day']);
});
