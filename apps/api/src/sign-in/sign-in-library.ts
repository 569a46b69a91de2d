import { betterAuth } from 'better-auth';
import type pg from 'pg';
import type { Settings } from '../config/settings.ts';
import { sessionCookieName } from '../http/session-cookie.ts';
import { hashPassword, isPassword } from './passwords.ts';

const DAY = 24 * 60 * 60;

/** Until when a session lives that is never used again. Each use moves it on (see who_calls). */
const IDLE_DAYS = 14;

/** At most this long, used or not: a phone on the potting bench is picked up every week. */
const AT_MOST_DAYS = 90;

const inDays = (days: number): Date => new Date(Date.now() + days * DAY * 1000);

/** Checks passwords, makes sessions, ends them. What else the library can do is not let through (sign-in.routes.ts). */
export function signInLibrary(settings: Settings, pool: pg.Pool) {
  const isSecure = settings.baseUrl.startsWith('https:');
  return betterAuth({
    appName: 'Sprigline',
    baseURL: settings.baseUrl,
    basePath: '/api/auth',
    secret: settings.secret,
    database: pool,
    trustedOrigins: [new URL(settings.baseUrl).origin],
    telemetry: { enabled: false },
    logger: { disabled: true },
    // Counted by ourselves, for account and address together (wrong-tries.ts).
    rateLimit: { enabled: false },
    onAPIError: { throw: true },
    emailAndPassword: {
      enabled: true,
      disableSignUp: true,
      minPasswordLength: 12,
      maxPasswordLength: 128,
      password: { hash: hashPassword, verify: ({ hash, password }) => isPassword(hash, password) },
    },
    session: { expiresIn: AT_MOST_DAYS * DAY, disableSessionRefresh: true, cookieCache: { enabled: false } },
    databaseHooks: {
      session: { create: { before: (session) => Promise.resolve({ data: { ...session, expiresAt: inDays(IDLE_DAYS) } }) } },
    },
    advanced: {
      cookiePrefix: 'sprigline',
      // `__Secure-` would be put before the name by the library; `__Host-` binds the cookie to this very host.
      useSecureCookies: false,
      defaultCookieAttributes: { secure: isSecure, httpOnly: true, sameSite: 'lax', path: '/' },
      cookies: { session_token: { name: sessionCookieName(settings.baseUrl) } },
      ipAddress: { disableIpTracking: true },
    },
  });
}

export type SignInLibrary = ReturnType<typeof signInLibrary>;
