import { expect, test } from 'vitest';
import { readSetCookie } from './set-cookie.ts';

test('a session cookie arrives with all that guards it', () => {
  expect(readSetCookie('__Secure-sprigline.session_token=abc.d%2Be%3D; Max-Age=1209600; Path=/; HttpOnly; Secure; SameSite=Lax')).toEqual({
    name: '__Secure-sprigline.session_token',
    value: 'abc.d+e=',
    maxAge: 1_209_600,
    path: '/',
    httpOnly: true,
    secure: true,
    sameSite: 'lax',
  });
});

test('a cookie that is taken away has no time left', () => {
  expect(readSetCookie('sprigline.session_token=; Max-Age=0; Path=/')).toMatchObject({ value: '', maxAge: 0, httpOnly: false });
});

test('what is no cookie is none', () => {
  expect(readSetCookie('=x; Path=/')).toBeUndefined();
  expect(readSetCookie('')).toBeUndefined();
});
