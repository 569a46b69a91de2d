export const PEOPLE_REFUSALS = {
  'programme/unknown': { status: 404, title: 'No such programme' },
  'invitation/unknown': { status: 404, title: 'This invitation is not known' },
} as const;
