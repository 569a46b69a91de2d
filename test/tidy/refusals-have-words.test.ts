import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { REFUSALS } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { ROOT } from './repository.ts';

const wordsIn = (name: string) => JSON.parse(readFileSync(join(ROOT, 'apps/web/messages/en', name), 'utf8')) as Record<string, string>;
const words = wordsIn('refusals.json');

test('every refusal that the API can send has words for a person', () => {
  expect(Object.keys(REFUSALS).filter((code) => !words[code]?.trim())).toEqual([]);
});

test.each(['refusals.json', 'refusals-on-phone.json'])('no words stand in %s for a refusal that nobody sends', (name) => {
  expect(Object.keys(wordsIn(name)).filter((code) => !(code in REFUSALS))).toEqual([]);
});
