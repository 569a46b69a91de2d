import type { FastifyReply, FastifyRequest } from 'fastify';

/**
 * Answers a read with 304 when the caller has what would be answered (RFC 9110, 13.1.2).
 * The fields that the full answer would have had stay: its ETag, how it may be kept, what it varies by.
 *
 * @returns whether the body is to be left out
 */
export function isUnchanged(request: FastifyRequest, reply: FastifyReply): boolean {
  const [seen, tag] = [request.headers['if-none-match'], reply.getHeader('etag')];
  if (request.method !== 'GET' || reply.statusCode !== 200 || seen === undefined || typeof tag !== 'string') return false;
  // Weak comparison: some proxies turn strong tags into weak ones.
  const tags = seen.split(',').map((one) => one.trim().replace(/^W\//, ''));
  return tags.includes('*') || tags.includes(tag);
}
