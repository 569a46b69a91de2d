import { number, text } from '../../lib/form-values.ts';

/** The body of a taxon, as its fields say it. */
export const taxonSaid = (form: FormData) => ({
  scientificName: text(form, 'scientificName'),
  commonName: text(form, 'commonName'),
  sensitivity: number(form, 'sensitivity'),
  firstCheckDays: number(form, 'firstCheckDays'),
  movingOnDays: number(form, 'movingOnDays'),
  verdictDays: number(form, 'verdictDays'),
});
