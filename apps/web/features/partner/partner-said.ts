import { day, text } from '../../lib/form-values.ts';

/** The body of a partner, as its fields say it. */
export const partnerSaid = (form: FormData) => ({ name: text(form, 'name'), since: day(form, 'since'), until: text(form, 'until') });
