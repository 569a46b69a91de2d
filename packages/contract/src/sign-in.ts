import { z } from 'zod';
import { Role } from './people.ts';
import { Handle, Id, Words } from './shapes.ts';

/** In small letters, so that one person has one account however they type it. */
export const Email = z
  .string()
  .trim()
  .toLowerCase()
  .pipe(z.email({ error: 'must be an e-mail address' }).max(254));
export type Email = z.infer<typeof Email>;

/** Length is what counts (OWASP ASVS 5.0, 6.2); any signs may be used, and none has to be. */
export const Password = z
  .string()
  .min(12, { error: 'must have at least 12 characters; a few words in a row do well' })
  .max(128, { error: 'must have at most 128 characters' })
  .refine((password) => new Set(password).size > 4, { error: 'must not be the same few signs again and again' });
export type Password = z.infer<typeof Password>;

export const NewAccount = z.strictObject({ name: Words, email: Email, password: Password });
export type NewAccount = z.infer<typeof NewAccount>;

/** Body of `POST /api/auth/sign-in/email`. Answers 204 with the session cookie. */
export const SignIn = z.strictObject({
  email: Email,
  password: z.string().min(1).max(128),
  /** False: the cookie goes when the browser is closed. */
  rememberMe: z.boolean().optional(),
});
export type SignIn = z.infer<typeof SignIn>;

/** Body of `POST /api/auth/change-password`. Answers 204. */
export const ChangePassword = z.strictObject({
  currentPassword: z.string().min(1).max(128),
  newPassword: Password,
  revokeOtherSessions: z.boolean().optional(),
});
export type ChangePassword = z.infer<typeof ChangePassword>;

/** Who is signed in, and where they work. */
export const Me = z.object({
  name: z.string(),
  email: z.string(),
  programmes: z.array(
    z.object({ id: Id, handle: Handle, name: z.string(), isDemo: z.boolean(), personId: Id, role: Role }),
  ),
});
export type Me = z.infer<typeof Me>;

/** The secret end of a link: 256 bits in base64url. */
export const TokenPath = z.object({ token: z.string().min(1).max(100) });
export type TokenPath = z.infer<typeof TokenPath>;

/** Body of `POST /reset-links/:token`. */
export const NewPassword = z.strictObject({ password: Password });
export type NewPassword = z.infer<typeof NewPassword>;
