import { REFUSALS } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { sourceFiles } from './repository.ts';

const OURS = /^(apps\/api|packages\/domain)\/src\//;
const files = sourceFiles().filter(({ path }) => OURS.test(path) && !/\.test\.ts$/.test(path));

/** The first thing said to DomainError, up to its comma: a code, or a choice of codes. No code begins with a slash; a problem's type does. */
const thrown = files.flatMap(({ path, text }) =>
  [...text.matchAll(/new DomainError\(([^,]+),/g)].flatMap(([, code = '']) => [...code.matchAll(/'([^'/][^']*)'/g)].map(([, literal = '']) => `${literal} in ${path}`)),
);

test('whatever is refused is on the list of refusals', () => {
  expect(thrown.length).toBeGreaterThan(50);
  expect(thrown.filter((one) => !((one.split(' ')[0] ?? '') in REFUSALS))).toEqual([]);
});

test('every refusal on the list is one that can come', () => {
  const literals = new Set(files.flatMap(({ text }) => [...text.matchAll(/'([a-z-]+\/[a-z-]+)'|\/problems\/([a-z-]+\/[a-z-]+)/g)].map(([, plain, problem]) => plain ?? problem)));

  expect(Object.keys(REFUSALS).filter((code) => !literals.has(code))).toEqual([]);
});
