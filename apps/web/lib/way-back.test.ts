import { expect, test } from 'vitest';
import { wayBack } from './way-back.ts';

test.each(['/programmes/harrowdale/batches?page=2', '/'])('leads back to %s', (path) => {
  expect(wayBack(path)).toBe(path);
});

test.each(['//elsewhere.example', '/\\elsewhere.example', 'https://elsewhere.example', 'javascript:alert(1)', '', undefined])('never leads to %s', (path) => {
  expect(wayBack(path)).toBe('/');
});
