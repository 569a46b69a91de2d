import { number, text } from '../../lib/form-values.ts';

/** The body of a stand, as its fields say it. */
export const standSaid = (form: FormData) => ({
  name: text(form, 'name'),
  partnerId: text(form, 'partnerId'),
  sensitivity: number(form, 'sensitivity'),
  note: text(form, 'note'),
});
