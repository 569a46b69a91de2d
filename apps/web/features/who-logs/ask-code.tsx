import { useTranslations } from 'next-intl';
import { type FormEvent, useId, useState } from 'react';
import type { Author } from '../../lib/phone/outbox-item.ts';
import { tryCode, type Tried } from '../../lib/phone/own-code.ts';
import { theStore } from '../../lib/phone/store.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { CodeInput } from './code-input.tsx';

/** Asks somebody for the code that they set on this device. */
export function AskCode({ person, right, leave }: { person: Author; right: () => void; leave: () => void }) {
  const t = useTranslations('whoLogs');
  const id = useId();
  const [code, setCode] = useState('');
  const [isBusy, setBusy] = useState(false);
  const [tried, setTried] = useState<Tried>();

  async function send(event: FormEvent): Promise<void> {
    event.preventDefault();
    if (isBusy) return;
    setBusy(true);
    const answer = await tryCode(await theStore(), person.personId, code, Date.now());
    setBusy(false);
    setCode('');
    setTried(answer);
    if (answer.is === 'right') right();
  }

  return (
    <form onSubmit={(event) => void send(event)} className="grid max-w-sm gap-3">
      <CodeInput id={id} label={t('codeOf', { name: person.name })} value={code} change={setCode} isFirst />
      <p role="alert" className="font-semibold text-rust empty:hidden">
        {tried?.is === 'wrong' && t('wrong', { left: tried.left })}
        {tried?.is === 'wait' && t('wait', { seconds: tried.seconds })}
      </p>
      <button className={buttonClass()} aria-disabled={isBusy}>{isBusy ? t('looking') : t('goOn', { name: person.name })}</button>
      <button type="button" onClick={leave} className={buttonClass('quiet')}>{t('somebodyElse')}</button>
      <p className="text-sm text-ink-soft">{t('forgotten')}</p>
    </form>
  );
}
