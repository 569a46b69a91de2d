import { expect, test } from 'vitest';
import { isKnown, refuseKnown } from './known-passwords.ts';

test.each(['123456789012', 'Password1234', 'qwerty123456!', 'ADMINISTRATOR', '1qaz2wsx3edc', 'dragondragon', '  letmein!!  '])('%s is what anybody tries first', (password) => {
  expect(isKnown(password)).toBe(true);
  expect(() => refuseKnown(password)).toThrow(expect.objectContaining({ code: 'sign-in/unfit-password' }));
});

test.each(['juniper on the ridge', 'yew and juniper', 'wet lid, dry root', 'Café under the yew', '94mi-nqfdw-h5va0-7'])('%s is nobody’s first try', (password) => {
  expect(isKnown(password)).toBe(false);
});
