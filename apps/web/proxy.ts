import { type NextRequest, NextResponse } from 'next/server';
import { isOfflineSwitchedOff } from './lib/offline-setting.ts';
import { securityHeaders } from './lib/security-headers.ts';

/** Gives each page its own nonce: only scripts that were sent with this very page may run on it. */
export function proxy(request: NextRequest): NextResponse {
  const nonce = crypto.randomUUID().replaceAll('-', '');
  const headers = securityHeaders(request.nextUrl.pathname, nonce, process.env.NODE_ENV === 'development');

  // Next reads the nonce out of the policy on its way in, and marks its own scripts with it.
  const inward = new Headers(request.headers);
  inward.set('content-security-policy', headers['content-security-policy']);
  inward.set('x-pathname', request.nextUrl.pathname + request.nextUrl.search);

  // Codes in capitals are smaller, so labels may say /L/; files that differ in capitals only would not do on every disk.
  const label = /^\/L(\/.*)?$/.exec(request.nextUrl.pathname);
  const asked = request.nextUrl.clone();
  if (label) asked.pathname = `/l${label[1] ?? ''}`;

  const isSwitchedOff = request.nextUrl.pathname === '/sw.js' && isOfflineSwitchedOff();
  if (isSwitchedOff) asked.pathname = '/no-worker.js';

  const response = label || isSwitchedOff ? NextResponse.rewrite(asked, { request: { headers: inward } }) : NextResponse.next({ request: { headers: inward } });
  for (const [name, value] of Object.entries(headers)) response.headers.set(name, value);
  return response;
}

export const config = { matcher: ['/((?!_next/static|fonts/|scan/|icon.svg).*)'] };
