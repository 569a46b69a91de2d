import { day, number, several, text } from '../../lib/form-values.ts';

/** The body of a permission, as its fields say it. */
export const permissionSaid = (form: FormData) => ({
  grantedBy: text(form, 'grantedBy'),
  land: text(form, 'land'),
  standId: text(form, 'standId'),
  taxonIds: several(form, 'taxonIds'),
  quota: number(form, 'quota'),
  validFrom: day(form, 'validFrom'),
  validUntil: text(form, 'validUntil'),
  terms: text(form, 'terms'),
  document: text(form, 'document'),
  plantsOwedBack: number(form, 'plantsOwedBack'),
});
