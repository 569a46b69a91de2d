import 'server-only';
import { cookies } from 'next/headers';
import { WORKDAY_COOKIE, WORKDAY_KEPT_S } from './workday-cookie.ts';
import { text } from './form-values.ts';

/** Keeps on this device which workday was chosen, so that it is chosen once a day; forgets it where none was. */
export async function rememberWorkday(form: FormData, name: string): Promise<void> {
  if (!form.has(name)) return;
  const jar = await cookies();
  const id = text(form, name);
  if (id === undefined) jar.delete(WORKDAY_COOKIE);
  else jar.set(WORKDAY_COOKIE, id, { path: '/', maxAge: WORKDAY_KEPT_S, sameSite: 'lax' });
}
