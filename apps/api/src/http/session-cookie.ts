import { createHmac, timingSafeEqual } from 'node:crypto';

/** On https the browser itself sees to it that no other host, and no plain http, can set this cookie. */
export const sessionCookieName = (baseUrl: string): string =>
  baseUrl.startsWith('https:') ? '__Host-sprigline.session_token' : 'sprigline.session_token';

/**
 * The session token of a cookie that this install has signed, if there is one.
 *
 * The cookie is `<token>.<HMAC-SHA-256 of it, base64>`. Whether the session lives is
 * asked of the database; the signature is checked here, so that a token read from a
 * stolen backup opens nothing.
 *
 * @param header the Cookie header
 */
export function sessionTokenOf(header: string | undefined, settings: { readonly baseUrl: string; readonly secret: string }): string | undefined {
  const name = sessionCookieName(settings.baseUrl);
  const cookie = header?.split(';').map((one) => one.trim()).find((one) => one.startsWith(`${name}=`));
  const value = cookie && decoded(cookie.slice(name.length + 1));
  if (!value) return undefined;

  const [token = '', signature = ''] = value.split('.');
  const expected = createHmac('sha256', settings.secret).update(token).digest();
  const given = Buffer.from(signature, 'base64');
  return given.length === expected.length && timingSafeEqual(given, expected) ? token : undefined;
}

function decoded(text: string): string | undefined {
  try {
    return decodeURIComponent(text);
  } catch {
    return undefined;
  }
}
