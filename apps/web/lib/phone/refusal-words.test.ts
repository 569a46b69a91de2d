import { createTranslator } from 'next-intl';
import { expect, test } from 'vitest';
import { REFUSAL_WORDS } from '../../messages/on-phone.ts';
import { refusalSaid } from './refusal-words.ts';

const fill = (words: string, facts: Readonly<Record<string, string | number>>) => createTranslator({ locale: 'en', messages: { words } as Readonly<Record<string, string>> })('words', facts);
const problem = (code: string, more: object = {}) => ({ type: `/problems/${code}`, title: 'No', status: 422, detail: 'what the API says', ...more });
const words = { refusals: { 'batch/held': 'They are held.', 'record/unknown': 'Open the page again.', 'entry/odd': 'There were {there}.' }, onPhone: { 'record/unknown': 'Send it again.' } };

test.each([
  ['the words of the code', problem('batch/held'), 'They are held.'],
  ['those for a phone, where another thing is to be done', problem('record/unknown'), 'Send it again.'],
  ['with the numbers that they ask for', problem('entry/odd', { facts: { there: 7 } }), 'There were 7.'],
  ['of a code without words what the API says', problem('new/code'), 'what the API says'],
  ['without even that, its title', { type: 'about:blank', title: 'The server answered 418', status: 418 }, 'The server answered 418'],
  ['what does not fit, in three parts at most', problem('batch/held', { errors: ['a', 'b', 'c', 'd'].map((name) => ({ pointer: `#/entries/0/${name}`, detail: 'is wrong' })) }), 'They are held. (a is wrong; b is wrong; c is wrong)'],
])('%s', (_, said, expected) => {
  expect(refusalSaid(said, words, fill)).toBe(expected);
});

test('every refusal can be read on a phone', () => {
  for (const code of Object.keys({ ...REFUSAL_WORDS.refusals, ...REFUSAL_WORDS.onPhone })) {
    expect(refusalSaid(problem(code), REFUSAL_WORDS, fill).length, code).toBeGreaterThan(10);
  }
});

test('on a phone nobody is sent to a page that they have not open', () => {
  expect(Object.values(REFUSAL_WORDS.onPhone).filter((said) => /open the page/i.test(said))).toEqual([]);
});
