import { ChangePassword, SignIn } from '@sprigline/contract';
import type { z } from 'zod';
import type { Json } from './components.ts';
import type { ContractSchemas } from './contract-schemas.ts';
import { REFUSED } from './operation.ts';

/** The doors of the sign-in library: they are no routes of Nest, so they are told of by hand. */
const DOORS: ReadonlyArray<{ path: string; summary: string; body?: z.ZodType; open?: true }> = [
  { path: 'sign-in/email', summary: 'Sign in: answers with the session cookie', body: SignIn, open: true },
  { path: 'sign-out', summary: 'Sign out' },
  { path: 'change-password', summary: 'Change your own password', body: ChangePassword },
  { path: 'revoke-other-sessions', summary: 'Sign out everywhere else' },
];

export const signInPaths = (schemas: ContractSchemas): Record<string, Json> =>
  Object.fromEntries(DOORS.map(({ path, summary, body, open }) => {
    const operation = {
      operationId: `SignIn.${path.replaceAll(/\W(\w)/g, (_, letter: string) => letter.toUpperCase())}`,
      summary,
      tags: ['SignIn'],
      ...(open && { security: [] }),
      ...(body && { requestBody: { required: true, content: { 'application/json': { schema: schemas.sent(body) } } } }),
      responses: { 204: { description: 'Done; nothing to tell' }, ...REFUSED },
    };
    return [`/api/auth/${path}`, { post: operation }];
  }));
