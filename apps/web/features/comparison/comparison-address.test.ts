import { expect, test } from 'vitest';
import { addressOf, askedIn, FOR_PARTNERS, queryFor } from './comparison-address.ts';

test('compares recipes unless the address says otherwise, and keeps what makes sense', () => {
  expect(askedIn({})).toEqual({ by: 'recipe', seed: 1 });
  expect(askedIn({ by: 'weather', allowFor: 'moon', against: '', seed: '-3' })).toEqual({ by: 'recipe', seed: 1 });
  expect(askedIn({ by: 'hormone', against: 'none', allowFor: 'season', trial: 'iba 3000 talc', seed: '4' })).toEqual({ by: 'hormone', against: 'none', allowFor: 'season', trial: 'iba 3000 talc', seed: 4 });
});

test('what is compared is not allowed for', () => expect(askedIn({ by: 'season', allowFor: 'season' })).not.toHaveProperty('allowFor'));
test('a partner who asks for recipes is shown ages', () => expect(askedIn({ by: 'recipe' }, FOR_PARTNERS)).toMatchObject({ by: 'ageClass' }));

test('the API is asked what the address says, without what is for the page alone', () => {
  expect(addressOf(queryFor({ by: 'medium', against: 'sand & peat', trial: 'moss', seed: 2 }, { season: '2025' }))).toBe('?season=2025&by=medium&against=sand+%26+peat');
});
