import { day, number, text } from '../../lib/form-values.ts';

/** How a place is kept, out of a form. */
export const regimeSaid = (form: FormData) => ({
  fromDay: day(form, 'fromDay'),
  lightHours: number(form, 'lightHours'),
  heatC: number(form, 'heatC'),
  air: text(form, 'air'),
  cover: text(form, 'cover'),
  note: text(form, 'note'),
});
