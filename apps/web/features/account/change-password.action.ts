'use server';

import { z } from 'zod';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { passCookiesOn } from '../../lib/pass-cookies.ts';
import { submit } from '../../lib/submit.ts';

/** Changes one's own password; other devices have to sign in again. */
export async function changePassword(before: FormState, form: FormData): Promise<FormState> {
  return submit(before, form, async () => {
    const body = { currentPassword: form.get('currentPassword') ?? '', newPassword: form.get('newPassword') ?? '', revokeOtherSessions: true };
    const { headers } = await ask('/api/auth/change-password', z.unknown(), { method: 'POST', body });
    await passCookiesOn(headers);
  });
}
