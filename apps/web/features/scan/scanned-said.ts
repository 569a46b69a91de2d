import type { UncheckedEntry } from '../../lib/entry-said.ts';
import { day, number, text } from '../../lib/form-values.ts';
import { lineField } from '../../lib/line-field.ts';
import type { LineEntry } from '../../lib/lines.ts';
import { MOST_SCANNED } from './scanned.ts';

/**
 * One entry for each scanned batch: it stands elsewhere now, whole; or, where it went to a site, so many of it were planted.
 * Trees that are planted already are moved.
 *
 * @param isAtSite whether the chosen place is a site or a plot
 */
export function scannedSaid(form: FormData, isAtSite: boolean): LineEntry[] {
  const placeId = text(form, 'placeId');
  const lines = Math.min(Number(number(form, 'lines')) || 0, MOST_SCANNED * 4);
  return Array.from({ length: lines }, (_, at) => at).flatMap((at) => {
    const told = (field: string) => text(form, lineField(at, field));
    const [batchId, toBatchId, id] = [told('batchId'), told('toBatchId'), told('entryId')];
    if (batchId === undefined || id === undefined) return [];
    const isPlanting = isAtSite && told('stage') !== 'planted';
    // A number left empty goes on as none, so that it is asked for beside its line.
    const saying = isPlanting ? { kind: 'planted', batchId, n: number(form, lineField(at, 'n')), toBatchId, placeId } : { kind: 'moved', batchId, placeId };
    return [{ at, entry: { ...around(form), id, saying } }];
  });
}

/** What all of them have in common. The minute was made with the page, so that sending again sends the same. */
function around(form: FormData): Omit<UncheckedEntry, 'id' | 'saying'> {
  const observedOn = day(form, 'observedOn');
  return { observedOn, minute: observedOn === text(form, 'madeOn') ? number(form, 'minute') : undefined, writtenAt: text(form, 'writtenAt'), note: text(form, 'note') };
}
