import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ROOT, repositoryFiles } from './repository.ts';

/**
 * Words of the trade that we decided against, each with the one to use. Split
 * here, so that this file does not find itself.
 */
const AGAINST: ReadonlyArray<{ word: RegExp; use: string }> = [
  { word: new RegExp(`\\b(str${'uck'}|str${'ike'}|str${'iking'}) (cuttings?|trays?|bundles?)\\b`, 'i'), use: 'to stick, stuck' },
  { word: new RegExp(`\\bprov${'enance'}s?\\b`, 'i'), use: 'stand' },
  { word: new RegExp(`\\b(dum${'my'}|lorem ip${'sum'}|fo${'obar'})\\b`, 'i'), use: 'a word that says what it is' },
];

/** Sources are quoted as they were printed. */
const QUOTES = /\.(csv|svg|png|woff2)$|^(package-lock\.json|LICENSE)$|(^|\/)(README|DEVELOPERS)\.md$/;

test('our own words are used', () => {
  const found = repositoryFiles()
    .filter((path) => !QUOTES.test(path))
    .flatMap((path) => wordsIn(path));

  expect(found).toEqual([]);
});

function wordsIn(path: string): string[] {
  return readFileSync(join(ROOT, path), 'utf8')
    .split('\n')
    .flatMap((line, index) =>
      AGAINST.filter(({ word }) => word.test(line)).map(({ use }) => `${path}:${index + 1} say: ${use} | ${line.trim()}`),
    );
}
