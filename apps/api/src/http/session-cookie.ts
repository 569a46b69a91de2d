import type { FastifyRequest } from 'fastify';

/** Written by the sign-in library: `<token>.<signature>`, with `__Secure-` before its name on https. */
const SESSION_COOKIE = /(?:^|;\s*)(?:__Secure-|__Host-)?sprigline\.session_token=([^;]+)/;

/**
 * The session token that a request carries, if any.
 *
 * Only its part before the signature is used: whether it is a living session is
 * asked of the database, where 256 random bits cannot be guessed.
 */
export function sessionTokenOf(request: FastifyRequest): string | undefined {
  const value = SESSION_COOKIE.exec(request.headers.cookie ?? '')?.[1];
  return value === undefined ? undefined : decodeURIComponent(value).split('.')[0];
}
