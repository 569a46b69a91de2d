import 'server-only';
import { headers } from 'next/headers';
import { setAddress } from './settings.ts';

/**
 * The address that people type, without a trailing slash: for codes on paper, which are read by a phone
 * somewhere else. `BASE_URL` where it is set; else the one that this very page was asked for by.
 */
export async function publicAddress(): Promise<string> {
  const set = setAddress();
  if (set !== undefined) return set;
  const inward = await headers();
  return `${inward.get('x-forwarded-proto')?.split(',')[0] ?? 'http'}://${inward.get('host') ?? 'localhost'}`;
}
