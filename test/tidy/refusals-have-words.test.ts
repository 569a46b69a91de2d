import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { REFUSALS } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { ROOT } from './repository.ts';

const words = JSON.parse(readFileSync(join(ROOT, 'apps/web/messages/en/refusals.json'), 'utf8')) as Record<string, string>;

test('every refusal that the API can send has words for a person', () => {
  expect(Object.keys(REFUSALS).filter((code) => !words[code]?.trim())).toEqual([]);
});

test('no words stand there for a refusal that nobody sends', () => {
  expect(Object.keys(words).filter((code) => !(code in REFUSALS))).toEqual([]);
});
