import { day, number, text } from '../../lib/form-values.ts';

/** The body of one version of a recipe, as its fields say it. */
export const versionSaid = (form: FormData, prefix = '') => ({
  id: text(form, `${prefix}id`),
  hormone: text(form, `${prefix}hormone`),
  hormonePpm: number(form, `${prefix}hormonePpm`),
  hormoneForm: text(form, `${prefix}hormoneForm`),
  medium: text(form, `${prefix}medium`),
  wound: text(form, `${prefix}wound`),
  steps: text(form, `${prefix}steps`),
  madeOn: day(form, `${prefix}madeOn`),
});

/** The body of a new recipe with its first version. */
export const recipeSaid = (form: FormData) => ({ name: text(form, 'name'), version: versionSaid(form, 'version/') });
