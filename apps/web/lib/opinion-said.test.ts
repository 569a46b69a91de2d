import { expect, test } from 'vitest';
import { createTranslator } from 'next-intl';
import type { Opinion } from '@sprigline/contract';
import { messages } from '../messages/en.ts';
import { notToldSaid, opinionSaid } from './opinion-said.ts';

const said = messages.secondOpinion;
const t = createTranslator({ locale: 'en', messages, namespace: 'secondOpinion', onError: (error) => { throw error; } }) as never;
const FACTS = { least: 9, most: 9, lower: 10, upper: 20, medium: 'sand', usual: 'peat', over: 2, few: 0, ten: 1, cuttings: 3, of: 50, oneTray: 2, oneHouse: 1, now: 2, already: 3, together: 5, wanted: 8, days: 42, earliest: 60, mixedUpWith: 'donor tray' };
const opinion = (more: Partial<Opinion>): Opinion => ({ about: 'length', verdict: 'unusual', basis: 'species-row', says: 'below', donors: [], facts: FACTS, ...more });

test('every sentence that there is can be said with the facts that come', () => {
  const all = Object.entries(said.says).flatMap(([about, sentences]) => Object.keys(sentences).map((says) => opinionSaid(opinion({ about: about as Opinion['about'], says }), 'Juniperus communis', said, t).says));
  expect(all.length).toBeGreaterThan(35);
  expect(all.filter((one) => one === '' || /[{}]/.test(one))).toEqual([]);
});

test('says what is unusual, why, on what it rests, and what others got', () => {
  const words = opinionSaid(opinion({ donors: ['CR-01', 'CR-05'], like: { goneOn: 4, settled: 40, donors: 2 } }), 'Juniperus communis', said, t);
  expect(words).toMatchObject({ about: 'Length', says: '9 cm is shorter than the usual 10 to 20 cm.', rests: 'what is published of Juniperus communis', trees: 'Concerns CR-01, CR-05.', others: ['Of your own like these, 4 of 40 rooted (10\u00a0%), of 2 trees.'] });
});

test('one value is told once, several from the least to the most', () => {
  const within = (most: number) => opinionSaid(opinion({ says: 'within', facts: { ...FACTS, least: 12, most } }), undefined, said, t).says;
  expect([within(12), within(14)]).toEqual(['12 cm, where 10 to 20 cm is usual.', '12 to 14 cm, where 10 to 20 cm is usual.']);
});

test('a comparison names what it is mixed up with', () => {
  expect(opinionSaid(opinion({ about: 'comparison', says: 'cannot-answer' }), undefined, said, t).says).toContain('each recipe has other trees; each recipe has its own tray');
});

test('what nobody told is named once', () => {
  expect(notToldSaid([opinion({ verdict: 'not-told' }), opinion({ about: 'light', verdict: 'not-told' })], said, t)).toBe('Not written down, so there is no opinion: length, light.');
  expect(notToldSaid([opinion({})], said, t)).toBeUndefined();
});
