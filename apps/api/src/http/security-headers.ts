/** What every answer of the API says to browsers: data, for this site only, never a page, never kept. */
export function securityHeaders(baseUrl: string): Readonly<Record<string, string>> {
  return {
    'content-security-policy': `default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'`,
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    'cross-origin-resource-policy': 'same-origin',
    'cross-origin-opener-policy': 'same-origin',
    'cache-control': 'no-store',
    vary: 'cookie',
    ...(baseUrl.startsWith('https:') ? { 'strict-transport-security': 'max-age=31536000' } : {}),
  };
}
