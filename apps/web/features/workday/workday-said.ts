import { day, number, several, text } from '../../lib/form-values.ts';

/** The body of a workday, as its fields say it. */
export const workdaySaid = (form: FormData) => ({
  day: day(form, 'day'),
  placeId: text(form, 'placeId'),
  tasks: text(form, 'tasks'),
  personIds: several(form, 'personIds'),
  others: number(form, 'others'),
  children: number(form, 'children'),
  hours: number(form, 'hours'),
});
