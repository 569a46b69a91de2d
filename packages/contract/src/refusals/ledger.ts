export const LEDGER_REFUSALS = {
  'entry/id-reused': { status: 422, title: 'That id stands for another entry' },
  'entry/kind-changed': { status: 422, title: 'A correction keeps the kind of the entry' },
  'entry/not-yours': { status: 403, title: 'Only your own entries, and only for a day' },
  'entry/unknown': { status: 404, title: 'No such entry' },
  'entry/needs-another-look': { status: 409, title: 'The books do not allow that' },
  'entry/breaks-later-ones': { status: 409, title: 'Later entries would not add up any more' },
  'batch/unknown': { status: 404, title: 'No such batch' },
  'batch/label-taken': { status: 409, title: 'That label has been used before' },
  'batch/stage-gone-back': { status: 422, title: 'Plants do not go back a stage' },
  'batch/other-sticking': { status: 422, title: 'Those plants are of another sticking' },
  'batch/held': { status: 409, title: 'These plants are held' },
} as const;
