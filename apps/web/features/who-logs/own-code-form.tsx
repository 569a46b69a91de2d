import { useTranslations } from 'next-intl';
import { type FormEvent, useId, useState } from 'react';
import type { Author } from '../../lib/phone/outbox-item.ts';
import { canHaveCodes, dropCode, isCode, setCode } from '../../lib/phone/own-code.ts';
import { theStore } from '../../lib/phone/store.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { CodeInput } from './code-input.tsx';

/** Sets a code of one's own on this device, or gives it up. Only for who logs here now: they were asked for the old one. */
export function OwnCodeForm({ person }: { person: Author }) {
  const t = useTranslations('whoLogs');
  const id = useId();
  const [code, setTyped] = useState('');
  const [said, say] = useState<'set' | 'dropped' | 'unfit'>();
  if (!canHaveCodes()) return <p className="text-sm">{t('noCodes')}</p>;

  async function set(event: FormEvent): Promise<void> {
    event.preventDefault();
    if (!isCode(code)) return say('unfit');
    await setCode(await theStore(), person.personId, code);
    setTyped('');
    say('set');
  }
  async function drop(): Promise<void> {
    await dropCode(await theStore(), person.personId);
    say('dropped');
  }

  return (
    <form onSubmit={(event) => void set(event)} className="grid max-w-sm gap-3">
      <p className="text-sm text-ink-soft">{t('codeLead')}</p>
      <CodeInput id={id} label={t('newCode', { name: person.name })} value={code} change={setTyped} />
      <p role="status" className="font-semibold empty:hidden">{said && t(`said.${said}`, { name: person.name })}</p>
      <div className="grid gap-2 sm:flex">
        <button className={buttonClass('quiet')}>{t('setCode')}</button>
        <button type="button" onClick={() => void drop()} className={buttonClass('quiet')}>{t('dropCode')}</button>
      </div>
    </form>
  );
}
