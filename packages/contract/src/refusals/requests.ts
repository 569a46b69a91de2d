export const REQUEST_REFUSALS = {
  'request/not-a-count': { status: 422, title: 'Those are not counts' },
  'request/more-than-free': { status: 409, title: 'Those plants are not free' },
  'request/does-not-fit': { status: 422, title: 'Those plants are not what was asked for' },
  'request/plants-set-aside': { status: 409, title: 'Plants are set aside for it' },
  'request/nothing-set-aside': { status: 409, title: 'Nothing is set aside for it' },
  'request/gone-already': { status: 409, title: 'These plants have gone' },
  'request/withdrawn': { status: 409, title: 'That request was withdrawn' },
  'request/partner-place-needed': { status: 422, title: 'Say where the partner keeps them' },
  'request/not-a-site': { status: 422, title: 'Trees are planted at a site or a plot' },
} as const;
