import { day, isTicked, number, text } from '../../lib/form-values.ts';

/** What can be said of a place at any time. */
export const placeContentSaid = (form: FormData) => ({
  name: text(form, 'name'),
  walkOrder: number(form, 'walkOrder') ?? 0,
  rows: number(form, 'rows'),
  partnerId: text(form, 'partnerId'),
  note: text(form, 'note'),
  roundEveryDays: number(form, 'roundEveryDays'),
});

/** A tray's new filling. */
export const fillingSaid = (form: FormData, prefix = '') => ({
  id: text(form, `${prefix}id`),
  filledOn: day(form, `${prefix}filledOn`),
  medium: text(form, `${prefix}medium`),
  mediumLot: text(form, `${prefix}mediumLot`),
  howCleaned: text(form, `${prefix}howCleaned`),
  plantsStayed: isTicked(form, `${prefix}plantsStayed`),
});

/** The body of a new place; a tray may come filled. */
export const placeSaid = (form: FormData) => ({
  ...placeContentSaid(form),
  kind: text(form, 'kind'),
  parentId: text(form, 'parentId'),
  filling: text(form, 'filling/medium') === undefined ? undefined : fillingSaid(form, 'filling/'),
});
