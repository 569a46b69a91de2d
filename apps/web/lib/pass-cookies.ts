import 'server-only';
import { cookies } from 'next/headers';
import { readSetCookie } from './set-cookie.ts';

/** Hands cookies that the API set on to the browser: sessions are the API's, and pages only carry them. */
export async function passCookiesOn(from: Headers): Promise<void> {
  const jar = await cookies();
  for (const line of from.getSetCookie()) {
    const cookie = readSetCookie(line);
    if (cookie) jar.set(cookie);
  }
}
