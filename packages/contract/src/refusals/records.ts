export const RECORD_REFUSALS = {
  'record/unknown': { status: 404, title: 'No such record' },
  'record/name-taken': { status: 409, title: 'That name is in use' },
} as const;
