import { useTranslations } from 'next-intl';
import { useEffect, useState } from 'react';
import { fieldAddress } from '../../lib/field-address.ts';
import { newDoubts } from '../../lib/phone/doubts.ts';
import { onNews } from '../../lib/phone/news.ts';
import { theStore } from '../../lib/phone/store.ts';

/** Says that something sent from here came out doubtful, until somebody has looked at it. */
export function DoubtsNotice() {
  const t = useTranslations('field');
  const [n, setN] = useState(0);
  useEffect(() => {
    const look = (): void => void theStore().then(newDoubts).then(setN, () => undefined);
    look();
    return onNews(look);
  }, []);
  if (n === 0) return null;
  return (
    <p className="mb-4 flex flex-wrap items-center justify-between gap-x-4 rounded-md border-2 border-on-straw bg-straw px-3 py-1 font-semibold text-on-straw">
      ! {t('doubts', { n })} <a href={fieldAddress('outbox')} className="inline-flex min-h-14 items-center underline">{t('seeDoubts')}</a>
    </p>
  );
}
