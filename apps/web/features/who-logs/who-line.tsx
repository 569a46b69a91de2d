'use client';

import { useTranslations } from 'next-intl';
import { useCallback } from 'react';
import { authorHere } from '../../lib/phone/device.ts';
import type { Store } from '../../lib/phone/store.ts';
import { useKept } from '../../lib/phone/use-kept.ts';

/** Stands above every screen on which one logs: under whose name. */
export function WhoLine({ programme }: { programme: string }) {
  const t = useTranslations('whoLogs');
  const name = useKept(useCallback((store: Store) => authorHere(store, programme).then((author): string | undefined => author.name, () => undefined), [programme]), undefined);
  return name === undefined ? null : <p className="not-on-paper mb-1 text-sm font-semibold">{t('line', { name })}</p>;
}
