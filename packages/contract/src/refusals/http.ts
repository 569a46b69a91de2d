export const HTTP_REFUSALS = {
  'http/unfit-request': { status: 422, title: 'The request does not fit' },
  'http/sign-in-first': { status: 401, title: 'Sign in first' },
  'http/not-allowed': { status: 403, title: 'You may not do that here' },
  'http/other-site': { status: 403, title: 'That request came from another site' },
  'http/not-found': { status: 404, title: 'There is nothing here' },
  'http/version-needed': { status: 428, title: 'Say which version you saw' },
  'http/version-stale': { status: 412, title: 'Somebody changed it since you looked' },
  'http/bad-request': { status: 400, title: 'That cannot be read' },
  'http/quota-exceeded': { status: 429, title: 'Too many requests in a minute' },
  'http/bad-cursor': { status: 400, title: 'That is no place in the list' },
  'http/json-only': { status: 415, title: 'Send JSON' },
  'http/too-large': { status: 413, title: 'That is more than is taken at once' },
} as const;
