'use client';

import { useMessages, useTranslations } from 'next-intl';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { Scanner, type ScanAnswer } from '../../ui/scanner/scanner.tsx';
import { lookUp } from './look-up.action.ts';
import { ManyForm } from './many-form.tsx';
import { isScanned, MOST_SCANNED, withBatch } from './scanned.ts';
import { useScanned } from './use-scanned.ts';

export interface ManyScreenProps {
  readonly programme: string;
  readonly personId: string;
  /** The address that labels are printed with. */
  readonly address: string;
  readonly today: string;
  readonly zone: string;
  readonly places: readonly (Choice & { readonly isSite: boolean })[];
  /** The list that was written last. */
  readonly sent: string | undefined;
}

/** Scan after scan onto one list, then one place for all of them. */
export function ManyScreen(props: ManyScreenProps) {
  const { programme, personId, address, places, sent } = props;
  const { list, now, change } = useScanned(programme, personId, sent);
  const { scanner } = useMessages().scan;
  const t = useTranslations('scan.moving');

  async function take(code: string): Promise<ScanAnswer> {
    const found = await lookUp(programme, code);
    if (found.is === 'neither') return { ...found, isTaken: false };
    if (found.is === 'place') {
      const place = places.find(({ value }) => value === found.placeId);
      if (!place) return { isTaken: false, words: t('noSuchPlace') };
      change((before) => ({ ...before, placeId: place.value }));
      return { isTaken: true, words: t('goesTo', { place: place.words }) };
    }
    if (isScanned(now(), found.batch.batchId)) return { isTaken: false, words: t('again') };
    if (now().batches.length >= MOST_SCANNED) return { isTaken: false, words: t('full', { n: MOST_SCANNED }) };
    change((before) => withBatch(before, found.batch));
    return { isTaken: true, words: t(found.batch.isHeld ? 'addedHeld' : 'added', { n: now().batches.length }) };
  }

  return (
    <div className="grid gap-8 lg:grid-cols-2">
      <Scanner words={scanner} addresses={[address]} onCode={take} isContinuous />
      <ManyForm {...props} list={list} change={change} />
    </div>
  );
}
