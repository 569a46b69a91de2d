import { useTranslations } from 'next-intl';
import { type FormEvent, useEffect, useId, useState } from 'react';
import { authorHere } from '../../lib/phone/device.ts';
import { onNews } from '../../lib/phone/news.ts';
import type { Author } from '../../lib/phone/outbox-item.ts';
import { isShared, keepTouch, markShared } from '../../lib/phone/shared.ts';
import { theStore } from '../../lib/phone/store.ts';
import { deviceName, nameDevice } from '../../lib/phone/telling.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { OwnCodeForm } from './own-code-form.tsx';

/** What this phone or tablet is called, whether several log on it, and a code of one's own. */
export function ThisDevice({ programme }: { programme: string }) {
  const t = useTranslations('whoLogs');
  const [author, setAuthor] = useState<Author>();
  const [shared, setShared] = useState(false);
  useEffect(() => {
    const look = async (): Promise<void> => {
      const store = await theStore();
      setShared(await isShared(store));
      setAuthor(await authorHere(store, programme));
    };
    const again = (): void => void look().catch(() => undefined);
    again();
    // Somebody else may be chosen meanwhile, and must not be shown the code of the one before.
    return onNews(again);
  }, [programme]);

  async function turn(): Promise<void> {
    keepTouch(window.localStorage, Date.now());
    await markShared(await theStore(), !shared);
    setShared(!shared);
  }

  return (
    <div className="grid gap-6">
      <NameForm />
      <div className="grid max-w-prose gap-2">
        <p className="text-sm text-ink-soft">{t('sharedLead')}</p>
        <button type="button" aria-pressed={shared} onClick={() => void turn()} className={`${buttonClass('quiet')} justify-self-start`}>{t(shared ? 'isShared' : 'isOwn')}</button>
      </div>
      {author && <OwnCodeForm key={author.personId} person={author} />}
    </div>
  );
}

function NameForm() {
  const t = useTranslations('whoLogs');
  const id = useId();
  const [name, setName] = useState('');
  const [isKept, setKept] = useState(false);
  useEffect(() => void theStore().then(deviceName).then((known) => setName(known ?? ''), () => undefined), []);
  async function keep(event: FormEvent): Promise<void> {
    event.preventDefault();
    await nameDevice(await theStore(), name);
    setKept(true);
  }
  return (
    <form onSubmit={(event) => void keep(event)} className="grid max-w-sm gap-2">
      <label htmlFor={id} className="font-semibold">{t('name')}</label>
      <p id={`${id}-hint`} className="text-sm text-ink-soft">{t('nameHint')}</p>
      <input id={id} value={name} maxLength={200} aria-describedby={`${id}-hint`} onChange={({ target }) => setName(target.value)} className="min-h-14 w-full rounded-md border-2 border-line-strong bg-sheet px-4" />
      <button className={`${buttonClass('quiet')} justify-self-start`}>{t('keepName')}</button>
      <p role="status" className="font-semibold empty:hidden">{isKept && t('kept')}</p>
    </form>
  );
}
