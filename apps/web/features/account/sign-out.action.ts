'use server';

import { redirect } from 'next/navigation';
import { z } from 'zod';
import { ask } from '../../lib/api.ts';
import { passCookiesOn } from '../../lib/pass-cookies.ts';
import { Refused } from '../../lib/refused.ts';

/** Ends the session on the server, not only in this browser. */
export async function signOut(): Promise<void> {
  try {
    const { headers } = await ask('/api/auth/sign-out', z.unknown(), { method: 'POST', body: {} });
    await passCookiesOn(headers);
  } catch (error) {
    // A session that is over already needs no ending.
    if (!(error instanceof Refused && error.problem.status < 500)) throw error;
  }
  redirect('/sign-in?left');
}
