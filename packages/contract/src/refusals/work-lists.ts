export const WORK_LIST_REFUSALS = {
  'work-list/nothing-to-do': { status: 409, title: 'Nothing belongs on that list' },
  'work-list/too-long': { status: 422, title: 'That list would be too long for one day' },
  'work-list/no-such-line': { status: 404, title: 'That sheet has no such line' },
  'work-list/nothing-told': { status: 422, title: 'That line says nothing' },
  'work-list/not-asked': { status: 422, title: 'That is not asked on this kind of list' },
  'work-list/alive-missing': { status: 422, title: 'Say how many are alive, too' },
  'work-list/rooted-above-alive': { status: 422, title: 'More rooted than alive' },
  'work-list/place-missing': { status: 422, title: 'Say where they stand now' },
  'work-list/typed-already': { status: 409, title: 'That line has been typed before' },
} as const;
