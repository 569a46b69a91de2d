import { apiPath } from '../../lib/phone/ask.ts';
import type { ToKeep, Work } from '../../lib/phone/outbox-item.ts';
import type { OwnItem } from '../../lib/phone/use-own.ts';

/** What a label was put on; one of the three. */
export interface LabelledHere {
  readonly batchId?: string;
  readonly donorTreeId?: string;
  readonly placeId?: string;
}

export interface ClaimHere {
  readonly code: string;
  readonly on: LabelledHere;
}

/** Says at the server what a label is on, once there is a signal. */
export const claimWork = (programme: string, id: string, { code, on }: ClaimHere): Pick<ToKeep, 'id' | 'about'> & { readonly work: Work } => ({
  id, about: code, work: { kind: 'record', method: 'POST', path: apiPath(programme, 'labels'), body: { code, ...on } },
});

/** Labels that were put on something on this phone; what the server did not take is on nothing. */
export function claimsHere(own: readonly OwnItem[]): ClaimHere[] {
  return own.flatMap((item) => {
    const { work } = item;
    if (work.kind !== 'record' || !work.path.endsWith('/labels') || ('refusal' in item && item.refusal !== undefined)) return [];
    // Made above, and nowhere else.
    const { code, ...on } = work.body as { code: string } & LabelledHere;
    return [{ code, on }];
  });
}
