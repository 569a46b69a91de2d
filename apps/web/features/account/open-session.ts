import 'server-only';
import { z } from 'zod';
import { ask } from '../../lib/api.ts';
import { passCookiesOn } from '../../lib/pass-cookies.ts';

/**
 * Signs in, and hands the session's cookie to the browser.
 *
 * @throws Refused when e-mail and password do not fit
 */
export async function openSession(email: string | undefined, password: string): Promise<void> {
  const { headers } = await ask('/api/auth/sign-in/email', z.unknown(), { method: 'POST', body: { email: email ?? '', password } });
  await passCookiesOn(headers);
}
