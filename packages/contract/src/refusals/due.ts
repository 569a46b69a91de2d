export const DUE_REFUSALS = {
  'due/not-due-then': { status: 409, title: 'That is not due on that day any more' },
  'due/until-out-of-reach': { status: 422, title: 'It can be put off for a year at most, and not into the past' },
  'due/id-reused': { status: 422, title: 'That id stands for another put-off' },
  'due/not-a-number-of-days': { status: 422, title: 'That is not a number of days' },
  'due/not-a-month': { status: 422, title: 'That is not a month' },
} as const;
