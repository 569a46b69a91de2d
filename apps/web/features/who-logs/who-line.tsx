'use client';

import { useTranslations } from 'next-intl';
import { useEffect, useState } from 'react';
import { authorHere } from '../../lib/phone/device.ts';
import { onNews } from '../../lib/phone/news.ts';
import { theStore } from '../../lib/phone/store.ts';

/** Stands above every screen on which one logs: under whose name. */
export function WhoLine({ programme }: { programme: string }) {
  const t = useTranslations('whoLogs');
  const [name, setName] = useState<string>();
  useEffect(() => {
    const look = (): void => void theStore().then((store) => authorHere(store, programme)).then((author) => setName(author.name), () => setName(undefined));
    look();
    return onNews(look);
  }, [programme]);
  return name === undefined ? null : <p className="not-on-paper mb-1 text-sm font-semibold">{t('line', { name })}</p>;
}
