import { createHmac, timingSafeEqual } from 'node:crypto';
import type { FastifyRequest } from 'fastify';

/**
 * Pages ask the API on behalf of a browser, so the API sees the server's own address.
 * The front therefore stamps each request for a page with the address it came from,
 * signed; the pages pass the stamp on. Nobody outside ever sees one.
 */
export const STAMP = 'x-sprigline-asked-from';

/** Only for requests that were found to come from our own pages (other-sites.ts). */
export const stampFor = (request: FastifyRequest, secret: string): string => `${request.ip} ${signed(request.ip, secret)}`;

/** The address behind a stamp that this install made, or nothing. */
export function stampedAddress(request: FastifyRequest, secret: string): string | undefined {
  const stamp = request.headers[STAMP];
  if (typeof stamp !== 'string') return undefined;
  const [address = '', signature = ''] = stamp.split(' ');
  const [given, expected] = [Buffer.from(signature), Buffer.from(signed(address, secret))];
  return given.length === expected.length && timingSafeEqual(given, expected) ? address : undefined;
}

/**
 * Where a request comes from, for counting tries: an IPv4 address, or the 64 bits of
 * an IPv6 address that one household has. `X-Forwarded-For` counts only as far as
 * the settings name proxies to be trusted.
 */
export function askedFrom(request: FastifyRequest, secret: string): string {
  const address = (stampedAddress(request, secret) ?? request.ip).replace(/^::ffff:(?=\d+\.)/, '');
  if (!address.includes(':')) return address;
  const [head = ''] = address.split('::');
  return [...head.split(':'), '0', '0', '0', '0'].slice(0, 4).map((group) => group || '0').join(':');
}

const signed = (address: string, secret: string): string => createHmac('sha256', secret).update(`asked-from ${address}`).digest('base64url');
