import { useTranslations } from 'next-intl';
import { useEffect, useState } from 'react';
import { changeTo, newerWorker } from '../../lib/phone/newer-worker.ts';
import { buttonClass } from '../../ui/button-class.ts';

/** Says that a newer version waits, on the one screen where nothing is being tapped in. */
export function UpdateNotice() {
  const t = useTranslations('field');
  const [newer, setNewer] = useState<ServiceWorker>();
  const [isBusy, setBusy] = useState(false);
  const isTyping = useIsTyping();
  useEffect(() => newerWorker(setNewer), []);
  if (!newer || isTyping) return null;
  return (
    <div role="status" className="mb-4 grid gap-2 rounded-md border-2 border-juniper bg-lichen p-4 text-on-lichen">
      <p>{t('newer')}</p>
      <button type="button" aria-disabled={isBusy} onClick={() => { setBusy(true); void changeTo(newer); }} className={buttonClass('quiet')}>{isBusy ? t('opening') : t('useNewer')}</button>
    </div>
  );
}

/** Whether something was typed on this page and not sent off yet: the page must not be opened anew then. */
function useIsTyping(): boolean {
  const [is, set] = useState(false);
  useEffect(() => {
    const [typed, sent] = [() => set(true), () => set(false)];
    window.addEventListener('input', typed);
    window.addEventListener('submit', sent);
    return () => {
      window.removeEventListener('input', typed);
      window.removeEventListener('submit', sent);
    };
  }, []);
  return is;
}
