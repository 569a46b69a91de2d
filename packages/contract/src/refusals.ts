import { DUE_REFUSALS } from './refusals/due.ts';
import { HTTP_REFUSALS } from './refusals/http.ts';
import { IMPORT_REFUSALS } from './refusals/imports.ts';
import { KEY_REFUSALS } from './refusals/keys.ts';
import { LABEL_REFUSALS } from './refusals/labels.ts';
import { LEDGER_REFUSALS } from './refusals/ledger.ts';
import { NUMBER_REFUSALS } from './refusals/numbers.ts';
import { PEOPLE_REFUSALS } from './refusals/people.ts';
import { PHOTO_REFUSALS } from './refusals/photos.ts';
import { PLAN_REFUSALS } from './refusals/plans.ts';
import { RECORD_REFUSALS } from './refusals/records.ts';
import { SEAL_REFUSALS } from './refusals/seals.ts';
import { WORK_LIST_REFUSALS } from './refusals/work-lists.ts';
import { REQUEST_REFUSALS } from './refusals/requests.ts';

export { HTTP_REFUSALS } from './refusals/http.ts';

export interface Refusal {
  readonly status: number;
  readonly title: string;
}

/** Every refusal the API can send. The key is the end of the problem type and never changes its meaning. */
export const REFUSALS: Readonly<Record<string, Refusal>> = {
  ...HTTP_REFUSALS, ...IMPORT_REFUSALS, ...KEY_REFUSALS, ...LEDGER_REFUSALS, ...NUMBER_REFUSALS, ...PEOPLE_REFUSALS, ...RECORD_REFUSALS,
  ...WORK_LIST_REFUSALS,
  ...REQUEST_REFUSALS,
  ...PHOTO_REFUSALS,
  ...PLAN_REFUSALS,
  ...DUE_REFUSALS,
  ...LABEL_REFUSALS,
  ...SEAL_REFUSALS,
};
