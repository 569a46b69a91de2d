import { day, number, text } from '../../lib/form-values.ts';

/** The body of a donor tree, as its fields say it. */
export const donorTreeSaid = (form: FormData) => ({
  label: text(form, 'label'),
  standId: text(form, 'standId'),
  taxonId: text(form, 'taxonId'),
  elevationBandM: number(form, 'elevationBandM'),
  ageClass: text(form, 'ageClass'),
  estimatedAgeYears: number(form, 'estimatedAgeYears'),
  sex: text(form, 'sex'),
  state: text(form, 'state'),
  stateSeenOn: day(form, 'stateSeenOn'),
  note: text(form, 'note'),
});
