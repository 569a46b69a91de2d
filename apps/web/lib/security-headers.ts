type Headers = Readonly<Record<string, string>> & { readonly 'content-security-policy': string };

/**
 * What every page says about what may run on it, who may frame it, and who is told its address.
 *
 * @param path of the page
 * @param nonce fresh for each answer
 * @param isDevelopment React shows server traces by `eval`, in development only
 */
export function securityHeaders(path: string, nonce: string, isDevelopment: boolean): Headers {
  const policy = [
    `default-src 'self'`,
    // WebAssembly may be compiled, for the reader of labels; text still never becomes script.
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic' 'wasm-unsafe-eval'${isDevelopment ? " 'unsafe-eval'" : ''}`,
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
    'referrer-policy': referrerPolicyOf(path),
    'permissions-policy': 'camera=(self), geolocation=(self), microphone=()',
    'cross-origin-opener-policy': 'same-origin',
  };
}

/** Whoever has the end of such an address may do what the link is for, so no log and no other page is told it. */
const SECRET_TO_READ = /^\/shared-plan\//;
const SECRET_WITH_A_FORM = /^\/(?:reset|invitation|set-up)\//;

function referrerPolicyOf(path: string): string {
  if (SECRET_TO_READ.test(path)) return 'no-referrer';
  // Not no-referrer: a form would be sent with the origin "null", which is refused. So the site is told, and never the path.
  if (SECRET_WITH_A_FORM.test(path)) return 'strict-origin';
  return 'same-origin';
}
