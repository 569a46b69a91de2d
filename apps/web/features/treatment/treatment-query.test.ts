import { expect, test } from 'vitest';
import { treatmentAddress, treatmentQuery } from './treatment-query.ts';

test.each([
  [{}, 'what=spray'],
  [{ what: 'all' }, ''],
  [{ what: 'water', placeId: '', from: '2026-01-01' }, 'what=water&from=2026-01-01'],
  [{ what: 'nonsense', until: '2026-02-01' }, 'until=2026-02-01'],
])('%j asks for %s', (search, query) => {
  expect(treatmentQuery(search).toString()).toBe(query);
});

test('everything is said in the address, so that it is not taken for sprays', () => {
  expect(treatmentQuery(Object.fromEntries(treatmentAddress(treatmentQuery({ what: 'all', from: '2026-01-01' })))).toString()).toBe('from=2026-01-01');
});
