import { expect, test } from 'vitest';
import { hashPassword, isPassword } from './passwords.ts';

test('a password is kept as argon2id with its costs beside it, and known again however its signs were composed', async () => {
  const stored = await hashPassword('Caf\u00e9 under the yew');
  expect(stored).toMatch(/^\$argon2id\$v=19\$m=65536,t=3,p=1\$/);
  expect(await isPassword(stored, 'Cafe\u0301 under the yew')).toBe(true);
  expect(await isPassword(stored, 'Cafe under the yew')).toBe(false);
});
