export const KEY_REFUSALS = {
  'key/not-a-key': { status: 401, title: 'That is no key of this service' },
  'key/unknown': { status: 401, title: 'This key is not known here' },
  'key/closed': { status: 401, title: 'This key does not open any more' },
  'key/scope-needed': { status: 403, title: 'This key is not let into that' },
  'key/not-here': { status: 403, title: 'No key opens this' },
  'key/shown-before': { status: 409, title: 'A key is shown once' },
} as const;
