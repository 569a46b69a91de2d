/** A cookie as `cookies().set` of Next takes it. */
export interface Cookie {
  readonly name: string;
  readonly value: string;
  readonly path?: string;
  readonly maxAge?: number;
  readonly httpOnly?: boolean;
  readonly secure?: boolean;
  readonly sameSite?: 'lax' | 'strict' | 'none';
}

/** One Set-Cookie line (RFC 6265, 4.1), without its Domain: the pages are the domain. */
export function readSetCookie(line: string): Cookie | undefined {
  const [pair = '', ...rest] = line.split(';').map((part) => part.trim());
  const at = pair.indexOf('=');
  if (at < 1) return undefined;

  const attributes = new Map(rest.map((part) => [part.split('=')[0]?.toLowerCase() ?? '', part.slice(part.indexOf('=') + 1)]));
  const sameSite = attributes.get('samesite')?.toLowerCase();
  const path = attributes.get('path');
  const maxAge = Number(attributes.get('max-age') ?? Number.NaN);
  return {
    name: pair.slice(0, at),
    // Next encodes it again on its way out.
    value: decodeURIComponent(pair.slice(at + 1)),
    httpOnly: attributes.has('httponly'),
    secure: attributes.has('secure'),
    ...(path === undefined ? {} : { path }),
    ...(Number.isFinite(maxAge) ? { maxAge } : {}),
    ...(sameSite === 'lax' || sameSite === 'strict' || sameSite === 'none' ? { sameSite } : {}),
  };
}
