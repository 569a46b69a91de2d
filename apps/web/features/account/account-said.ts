import { text } from '../../lib/form-values.ts';

/** Who somebody is, as the fields say it. A password is taken as it is, spaces too. */
export function accountSaid(form: FormData, prefix = '') {
  const password = form.get(`${prefix}password`);
  return { name: text(form, `${prefix}name`), email: text(form, `${prefix}email`), password: typeof password === 'string' ? password : '' };
}
