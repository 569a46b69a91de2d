import { DomainError } from '@sprigline/domain';
import type { FastifyRequest } from 'fastify';
import { createHmac, timingSafeEqual } from 'node:crypto';

/** 96 bits: nobody guesses them, and addresses stay short. */
const SEAL_BYTES = 12;
/** Say how much of a list is asked for, and from where: not which list it is. */
const NOT_A_FILTER = new Set(['after', 'limit']);

/**
 * A place in one list: its sort keys, sealed together with the list's address and
 * filters. Taken to another list, or to the same one filtered otherwise, it would
 * skip and repeat in silence; so it is refused there.
 */
export function sealedCursor(keys: readonly string[], url: string, secret: string): string {
  const told = Buffer.from(JSON.stringify(keys)).toString('base64url');
  return `${told}.${seal(told, url, secret)}`;
}

/** @throws DomainError `http/bad-cursor` for one that was not made for this list, or not by this install */
export function openedCursor(after: string, url: string, secret: string): string {
  const [told = '', sealed = ''] = after.split('.');
  const [given, expected] = [Buffer.from(sealed), Buffer.from(seal(told, url, secret))];
  if (given.length === expected.length && timingSafeEqual(given, expected)) return told;
  throw new DomainError('http/bad-cursor', 'take `after` from the Link of the part before, with the same filters, or leave it out to begin');
}

/** Opens the cursor of a request, so that what reads the list finds its sort keys. */
export function openCursorOf(request: FastifyRequest, secret: string): void {
  const query = request.query as Record<string, unknown> | undefined;
  if (typeof query?.['after'] === 'string') query['after'] = openedCursor(query['after'], request.url, secret);
}

function seal(told: string, url: string, secret: string): string {
  const { pathname, searchParams } = new URL(url, 'http://here');
  const filters = [...searchParams].filter(([name]) => !NOT_A_FILTER.has(name)).sort(([a, x], [b, y]) => (a === b ? (x < y ? -1 : 1) : a < b ? -1 : 1));
  return createHmac('sha256', secret).update(`cursor ${pathname} ${JSON.stringify(filters)} ${told}`).digest().subarray(0, SEAL_BYTES).toString('base64url');
}
