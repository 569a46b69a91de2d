import type { TapState } from '@sprigline/contract';
import { type Conditions, INCIDENT_OF_TAP, isBad, type Tap, type TapAnswer } from '@sprigline/domain';
import type { EntryToSend } from '../../lib/entry-to-send.ts';
import { newId } from '../../lib/new-id.ts';

export const SEVERITIES = ['slight', 'serious', 'severe'] as const;
export type Severity = (typeof SEVERITIES)[number];

/** How the place was found, as it is tapped in before the batches. Kept on the phone until it is in the books. */
export interface PlaceAnswer {
  readonly found: Conditions;
  readonly severity: Readonly<Partial<Record<Tap, Severity>>>;
  readonly writtenAt: string;
  /** Minute of the day, when it was seen today. */
  readonly minute?: number | undefined;
  /** Ids of the entries that it becomes, made once: sent twice, they are written once. */
  readonly ids: Readonly<Record<string, string>>;
}

/** What is wrong and not known to be so yet: each opens an incident. */
export const newlyBad = (found: Conditions, taps: readonly TapState[]): Tap[] =>
  taps.filter(({ tap, open }) => open === null && found[tap] !== undefined && isBad(tap, found[tap])).map(({ tap }) => tap);

/** Tapped once it is said, tapped again it is not. Each entry gets its id with the first tap and keeps it. */
export function placeAfter(before: PlaceAnswer | undefined, tap: Tap, answer: TapAnswer, minute: number | undefined): PlaceAnswer | undefined {
  const { [tap]: was, ...others } = before?.found ?? {};
  const found = was === answer ? others : { ...others, [tap]: answer };
  if (Object.keys(found).length === 0) return undefined;
  const ids: Readonly<Record<string, string>> = { found: newId(), ...before?.ids };
  return {
    found, minute, severity: before?.severity ?? {}, writtenAt: before?.writtenAt ?? new Date().toISOString(),
    ids: ids[tap] === undefined ? { ...ids, [tap]: newId() } : ids,
  };
}

/** One entry on the place with all that was tapped, and an incident for each thing that is newly wrong. */
export function entriesOfPlace(placeId: string, answer: PlaceAnswer | undefined, taps: readonly TapState[], around: { readonly day: string; readonly seenBy: string; readonly workdayId?: string | undefined }): EntryToSend[] {
  if (!answer) return [];
  const entry = (id: string, saying: EntryToSend['saying']): EntryToSend => ({
    id, observedOn: around.day, writtenAt: answer.writtenAt, saying,
    ...(around.seenBy === '' ? {} : { seenBy: around.seenBy }),
    ...(around.workdayId === undefined ? {} : { workdayId: around.workdayId }),
    ...(answer.minute === undefined ? {} : { minute: answer.minute }),
  });
  const incidents = newlyBad(answer.found, taps).map((tap) => {
    const lastGoodOn = taps.find((one) => one.tap === tap)?.lastGoodOn;
    return entry(answer.ids[tap] ?? '', {
      kind: 'incident', placeId, what: INCIDENT_OF_TAP[tap], severity: answer.severity[tap] ?? 'serious',
      // A walk told late may lie before the last good day.
      ...(lastGoodOn && lastGoodOn <= around.day ? { lastGoodOn } : {}),
    });
  });
  return [entry(answer.ids['found'] ?? '', { kind: 'noted', placeId, conditions: answer.found }), ...incidents];
}
