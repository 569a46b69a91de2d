import { day, number, text } from '../../lib/form-values.ts';
import { lineField } from '../../lib/line-field.ts';
import type { LineEntry } from '../../lib/lines.ts';
import { stickingIdOf } from '../../lib/sticking-id.ts';

/** A filled tray: one entry for each bundle that cuttings of it were stuck into the tray. Lines without a number say nothing. */
export function traySaid(form: FormData, lines: number): LineEntry[] {
  const observedOn = day(form, 'observedOn');
  const recipeVersionId = text(form, 'recipeVersionId');
  return Array.from({ length: lines }, (_, at) => at).flatMap((at) => {
    const told = (field: string) => text(form, lineField(at, field));
    const n = number(form, lineField(at, 'n'));
    const bundleId = told('bundleId') ?? '';
    const damaged = number(form, lineField(at, 'damaged'));
    const saying = {
      kind: 'stuck', batchId: told('batchId'), stickingId: stickingIdOf(bundleId, observedOn ?? '', recipeVersionId), n, placeId: text(form, 'placeId'), bundleId, recipeVersionId,
      rows: told('rows'), label: told('label'), medium: text(form, 'medium'),
      wood: text(form, 'wood'), strippedAround: number(form, lineField(at, 'strippedAround')),
      ...(damaged === undefined ? {} : { damaged: [{ n: damaged, how: told('how') }] }),
    };
    const minute = observedOn === text(form, 'madeOn') ? number(form, 'minute') : undefined;
    const entry = { id: told('entryId') ?? '', observedOn, minute, writtenAt: text(form, 'writtenAt'), note: text(form, 'note'), saying };
    return n === undefined ? [] : [{ at, entry }];
  });
}
