type Headers = Readonly<Record<string, string>> & { readonly 'content-security-policy': string };

/**
 * What every page says about what may run on it and who may frame it.
 *
 * @param nonce fresh for each answer
 * @param isDevelopment React shows server traces by `eval`, in development only
 */
export function securityHeaders(nonce: string, isDevelopment: boolean): Headers {
  const policy = [
    `default-src 'self'`,
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${isDevelopment ? " 'unsafe-eval'" : ''}`,
    `style-src 'self' 'nonce-${nonce}'${isDevelopment ? " 'unsafe-inline'" : ''}`,
    `img-src 'self' blob: data:`,
    `connect-src 'self'${isDevelopment ? ' ws:' : ''}`,
    `worker-src 'self'`,
    `manifest-src 'self'`,
    `object-src 'none'`,
    `base-uri 'none'`,
    `form-action 'self'`,
    `frame-ancestors 'none'`,
  ];
  return {
    'content-security-policy': policy.join('; '),
    'x-content-type-options': 'nosniff',
    // Not no-referrer: that would send forms with the origin "null", which is refused.
    'referrer-policy': 'same-origin',
    'permissions-policy': 'camera=(self), geolocation=(self), microphone=()',
    'cross-origin-opener-policy': 'same-origin',
  };
}
