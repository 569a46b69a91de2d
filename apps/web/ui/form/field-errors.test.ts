import { expect, test } from 'vitest';
import { fieldErrors, strayErrors } from './field-errors.ts';

const labels = { name: 'Name', 'exactPlace/latitude': 'Latitude', bundles: 'Bundles' };

function problem(pointer: string, detail: string) {
  return { type: '/problems/http/unfit-request', title: 'The request does not fit', status: 422, errors: [{ pointer, detail }] };
}

const ours = { needsAnAnswer: 'needs an answer', mustBeANumber: 'must be a number' };

test('a sentence stands beside the field that it is about', () => {
  expect(fieldErrors(problem('#/name', 'must not be empty'), labels, ours)).toEqual({ name: 'Name must not be empty.' });
});

test('a field within a thing is found by its whole path', () => {
  expect(fieldErrors(problem('#/exactPlace/latitude', 'must be at most 90'), labels, ours)).toEqual({ 'exactPlace/latitude': 'Latitude must be at most 90.' });
});

test('a part without a field marks the field above it', () => {
  expect(fieldErrors(problem('#/bundles/2/cuttings', 'must be at least 1'), labels, ours)).toEqual({ bundles: 'Bundles must be at least 1.' });
});

test('what was left out is said in words of ours', () => {
  expect(fieldErrors(problem('#/name', 'Invalid input: expected string, received undefined'), labels, ours)).toEqual({ name: 'Name needs an answer.' });
});

test('a thing that was not chosen needs an answer, and nobody is told of its id', () => {
  expect(fieldErrors(problem('#/name', 'must be a UUID of version 7 (or 8 for an import)'), labels, ours)).toEqual({ name: 'Name needs an answer.' });
});

test('what is no number is said in words of ours', () => {
  expect(fieldErrors(problem('#/name', 'Invalid input: expected number, received string'), labels, ours)).toEqual({ name: 'Name must be a number.' });
});

test('what no field shows is still said', () => {
  expect(fieldErrors(problem('#', 'two trips on one day'), labels, ours)).toEqual({});
  expect(strayErrors(problem('#', 'two trips on one day'), labels)).toEqual(['two trips on one day']);
});
