import { expect, test } from 'vitest';
import { withDatabaseWords } from './database-words.mjs';

const failure = (code: string): Error => Object.assign(new Error('as it was said'), { code });

test.each(['ECONNREFUSED', 'ENOTFOUND', 'ETIMEDOUT', '28P01', '28000', '3D000'])('%s comes with something to do', (code) => {
  expect(withDatabaseWords(failure(code))).toMatchObject({ name: 'Error', message: expect.stringMatching(/as it was said\n.*(DATABASE_|firewall)/) });
});

test('anything else is shown as it came, because it is a defect', () => {
  const other = failure('42501');

  expect(withDatabaseWords(other)).toBe(other);
  expect(withDatabaseWords('words')).toBe('words');
});
