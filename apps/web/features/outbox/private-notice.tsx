import { useTranslations } from 'next-intl';
import { useEffect, useState } from 'react';
import { looksPrivate } from '../../lib/phone/private-window.ts';

/** Says that what is tapped in here will be gone when the window is closed, where the browser lets one see it. */
export function PrivateNotice() {
  const t = useTranslations('outbox');
  const [is, set] = useState(false);
  useEffect(() => void looksPrivate(navigator).then(set, () => undefined), []);
  if (!is) return null;
  return (
    <div role="alert" className="mb-4 rounded-md border-2 border-rust bg-rust-wash p-3 text-rust">
      <p className="font-semibold">! {t('private')}</p>
      <p>{t('privateDo')}</p>
    </div>
  );
}
