import { keptLabel } from '@sprigline/domain';
import type { PackedBundle } from '@sprigline/contract';
import type { EntryToSend } from '../../lib/entry-to-send.ts';
import type { OwnItem } from '../../lib/phone/use-own.ts';
import { areRows, labelSlip } from './act.ts';
import type { Choosable } from '../../ui/form/narrowed.ts';

export type StickNumber = 'n' | 'damaged' | 'stripped';

/** One line of a sticking night, as it is tapped in. Nothing of it is carried over to the next one. */
export interface StickTold {
  readonly bundleId?: string | undefined;
  readonly placeId?: string | undefined;
  readonly rows?: string | undefined;
  readonly n?: number | undefined;
  readonly damaged?: number | undefined;
  readonly how?: string | undefined;
  /** Bark torn off all around: blank is not looked at, nought is none. */
  readonly stripped?: number | undefined;
  readonly label?: string | undefined;
}

export type StickSlip = 'bundle' | 'where' | 'howMany' | 'rows' | 'damagedAbove' | 'how' | 'strippedAbove' | 'label' | 'labelTaken';

const trimmed = (words: string | undefined): string => (words ?? '').trim();

/** What is missing or wrong before it is kept. More than the bundle had is no slip: the bundle may have been miscounted. */
export function stickSlip({ bundleId, placeId, rows, n = 0, damaged = 0, how, stripped = 0, label }: StickTold, labels: ReadonlySet<string>): StickSlip | undefined {
  if (bundleId === undefined) return 'bundle';
  if (placeId === undefined) return 'where';
  if (n <= 0) return 'howMany';
  if (!areRows(rows)) return 'rows';
  if (damaged > n) return 'damagedAbove';
  if (damaged > 0 && trimmed(how) === '') return 'how';
  if (stripped > n) return 'strippedAbove';
  return labelSlip(label, labels);
}

/** What a line says, once nothing is missing in it. */
export function stuckSaid({ bundleId = '', placeId = '', rows, n = 0, damaged = 0, how, stripped, label }: StickTold, ids: { readonly batchId: string; readonly stickingId: string }, recipeVersionId: string | undefined): EntryToSend['saying'] {
  return {
    kind: 'stuck', ...ids, n, placeId, bundleId,
    ...(recipeVersionId === undefined ? {} : { recipeVersionId }),
    ...(trimmed(rows) === '' ? {} : { rows: trimmed(rows) }),
    ...(trimmed(label) === '' ? {} : { label: keptLabel(trimmed(label)) }),
    ...(damaged > 0 ? { damaged: [{ n: damaged, how: trimmed(how) }] } : {}),
    ...(stripped === undefined ? {} : { strippedAround: stripped }),
  };
}

/**
 * Cuttings of each bundle that are not stuck: neither by the pack, nor here since. Below nought when more were stuck than it had.
 *
 * @param packedAt by this device's clock, in milliseconds since 1970: what was sent before, the pack knows
 */
export function leftOf(bundles: readonly PackedBundle[], own: readonly OwnItem[], packedAt: number): ReadonlyMap<string, number> {
  const left = new Map(bundles.map(({ id, cuttings, stuck }) => [id, cuttings - stuck]));
  for (const { entry, item } of stuckHere(own)) {
    const { bundleId = '', n } = entry.saying;
    const before = left.get(bundleId);
    if (before !== undefined && !('sentAt' in item && item.sentAt < packedAt)) left.set(bundleId, before - n);
  }
  return left;
}

type StuckEntry = EntryToSend & { readonly saying: Extract<EntryToSend['saying'], { kind: 'stuck' }> };

/** What was stuck on this phone and not taken back, as it lies in the outbox. */
export function stuckHere(own: readonly OwnItem[]): { readonly item: OwnItem; readonly entry: StuckEntry }[] {
  const withdrawn = new Set(own.flatMap(({ work }) => (work.kind === 'entry' && work.entry.saying.kind === 'withdrawn' ? [work.entry.saying.entryId] : [])));
  return own.flatMap((item) => (item.work.kind === 'entry' && isStuck(item.work.entry) && !withdrawn.has(item.id) ? [{ item, entry: item.work.entry }] : []));
}

/** Trays that lines went into, each once, the first one first, with the day of the last line. */
export function traysStuck<P extends { readonly id: string; readonly kind: string }>(lines: readonly { readonly entry: Pick<StuckEntry, 'observedOn' | 'saying'> }[], places: readonly P[]): { readonly tray: P; readonly day: string }[] {
  const days = new Map(lines.map(({ entry: { saying, observedOn } }) => [saying.placeId, observedOn]));
  return [...days].flatMap(([id, day]) => places.filter((place) => place.id === id && place.kind === 'tray').map((tray) => ({ tray, day })));
}

const isStuck = (entry: EntryToSend): entry is StuckEntry => entry.saying.kind === 'stuck';

/** Bundles to choose from; those with nothing left stand last, since they may have been miscounted. @param say what tells them apart */
export function bundleChoices(bundles: readonly PackedBundle[], left: ReadonlyMap<string, number>, say: (bundle: PackedBundle, left: number) => string): Choosable[] {
  const isEmpty = ({ id }: PackedBundle): number => ((left.get(id) ?? 0) > 0 ? 0 : 1);
  return bundles
    .toSorted((one, other) => isEmpty(one) - isEmpty(other))
    .map((bundle) => ({ id: bundle.id, name: bundle.donorTree, within: say(bundle, Math.max(0, left.get(bundle.id) ?? 0)) }));
}
