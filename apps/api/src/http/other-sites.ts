import { DomainError } from '@sprigline/domain';
import type { FastifyRequest } from 'fastify';

const ONLY_READS = new Set(['GET', 'HEAD', 'OPTIONS']);

/** What an HTML form on any other site can send without asking first. */
const FORM_TYPES = /^(text\/plain|application\/x-www-form-urlencoded|multipart\/form-data)/i;

/**
 * Refuses changes that another site makes with somebody's cookie.
 *
 * `Sec-Fetch-Site` decides where the browser sends it. Without it (plain http on a
 * local network) the origin must be this host or the install's address. With neither
 * a request that carries a cookie is refused, since no present browser sends one so.
 *
 * @throws DomainError `http/other-site`
 */
export function refuseOtherSites(request: FastifyRequest, baseUrl: string): void {
  if (ONLY_READS.has(request.method)) return;

  const { 'sec-fetch-site': site, origin, host, cookie } = request.headers;
  if (site !== undefined) {
    if (site === 'same-origin' || site === 'none') return;
  } else if (origin === undefined) {
    if (cookie === undefined) return;
  } else if (origin === new URL(baseUrl).origin || (URL.canParse(origin) && new URL(origin).host === host)) {
    return;
  }
  throw new DomainError('http/other-site', `open ${baseUrl} and do it there`);
}

/** @throws DomainError `http/json-only` for bodies that a form could send */
export function refuseForms(request: FastifyRequest): void {
  if (FORM_TYPES.test(request.headers['content-type'] ?? '')) {
    throw new DomainError('http/json-only', 'send the body as application/json');
  }
}
