import { day, number, text } from '../../lib/form-values.ts';

/** An outing as its fields say it. Without a permission chosen the API looks for the one that covers it. */
export const outingSaid = (form: FormData) => ({
  wentOn: day(form, 'wentOn'),
  standId: text(form, 'standId'),
  permissionId: text(form, 'permissionId'),
  ledBy: text(form, 'ledBy'),
  people: number(form, 'people'),
});

/** The body of a new trip; its bundles follow one by one. */
export const tripSaid = (form: FormData) => ({ ...outingSaid(form), note: text(form, 'note') });

/** The body of a bundle. */
export const bundleSaid = (form: FormData) => ({
  donorTreeId: text(form, 'donorTreeId'),
  cuttings: number(form, 'cuttings'),
  heightM: number(form, 'heightM'),
  shoot: text(form, 'shoot'),
  foliage: text(form, 'foliage'),
  base: text(form, 'base'),
  lengthCm: number(form, 'lengthCm'),
});
