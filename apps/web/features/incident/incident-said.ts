import { SAYING } from '../../lib/entry-said.ts';
import { text } from '../../lib/form-values.ts';

/** What went wrong at a place, out of a form. */
export function incidentSaid(placeId: string, form: FormData): object {
  const told = (name: string) => text(form, `${SAYING}${name}`);
  return {
    kind: 'incident', placeId,
    what: told('what'), severity: told('severity'), lastGoodOn: told('lastGoodOn'), untilDay: told('untilDay'), detail: told('detail'),
  };
}
