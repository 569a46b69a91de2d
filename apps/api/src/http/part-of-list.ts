import type { FastifyReply, FastifyRequest } from 'fastify';
import { DomainError } from '@sprigline/domain';

/** Some of a long list, and where the rest begins. */
export interface Part<T> {
  readonly items: T[];
  /** Sort keys of the last item, while there are more. */
  readonly last?: readonly string[];
}

/**
 * Cuts rows that were asked for with one more than the limit.
 *
 * @param keysOf the sort keys of an item: what the next part must come after
 */
export function partOf<T>(rows: readonly T[], limit: number, keysOf: (item: T) => readonly string[]): Part<T> {
  const items = rows.slice(0, limit);
  const last = items.at(-1);
  return rows.length > limit && last !== undefined ? { items, last: keysOf(last) } : { items };
}

/** Answers the items, and names the next part in `Link` (RFC 8288). */
export function answerPart<T>(part: Part<T>, request: FastifyRequest, reply: FastifyReply): T[] {
  if (part.last) {
    const url = new URL(request.url, 'http://here');
    url.searchParams.set('after', request.sealCursor(part.last));
    void reply.header('link', `<${url.pathname}${url.search}>; rel="next"`);
  }
  return part.items;
}

/**
 * The sort keys in an `after` that an earlier `Link` gave out; its seal is opened at the front.
 *
 * @throws DomainError `http/bad-cursor` for anything else
 */
export function keysAfter(after: string | undefined, count: number): readonly string[] | undefined {
  if (after === undefined) return undefined;
  try {
    const keys: unknown = JSON.parse(Buffer.from(after, 'base64url').toString());
    if (Array.isArray(keys) && keys.length === count && keys.every((key) => typeof key === 'string')) return keys;
  } catch {
    // Falls through to the refusal: it was not made by us.
  }
  throw new DomainError('http/bad-cursor', 'take `after` from the Link of the part before, or leave it out to begin');
}
