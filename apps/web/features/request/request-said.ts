import { day, number, several, text } from '../../lib/form-values.ts';

/** The body of a request, as its fields say it. */
export const requestSaid = (form: FormData) => ({
  outside: text(form, 'outside'),
  partnerId: text(form, 'partnerId'),
  taxonId: text(form, 'taxonId'),
  stage: text(form, 'stage'),
  plants: number(form, 'plants'),
  mostPerDonor: number(form, 'mostPerDonor'),
  askedOn: day(form, 'askedOn'),
  wantedOn: text(form, 'wantedOn'),
  standIds: several(form, 'standIds'),
  placeId: text(form, 'placeId'),
  permissionId: text(form, 'permissionId'),
  note: text(form, 'note'),
});

/** How many of each batch; a line left empty, or at nought, says nothing. */
export function linesSaid(form: FormData): { batchId: string; n: number | string }[] {
  return several(form, 'n').flatMap((batchId) => {
    const n = number(form, `n/${batchId}`);
    return n === undefined || n === 0 ? [] : [{ batchId, n }];
  });
}
