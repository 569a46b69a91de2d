import { createTranslator, useLocale, useTranslations } from 'next-intl';
import { useState } from 'react';
import { putAside, sendOnceMore } from '../../lib/phone/decide.ts';
import { announce } from '../../lib/phone/news.ts';
import type { OutboxItem } from '../../lib/phone/outbox-item.ts';
import { refusalSaid } from '../../lib/phone/refusal-words.ts';
import { refusedLabel } from '../../lib/phone/relabel.ts';
import { sendNow } from '../../lib/phone/sending.ts';
import { theStore } from '../../lib/phone/store.ts';
import { REFUSAL_WORDS } from '../../messages/on-phone.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { INPUT } from '../../ui/form/input-class.ts';
import type { KnownHere } from './known-here.ts';
import { canBeGiven } from './note-for-coordinator.ts';
import { OtherLabel } from './other-label.tsx';
import { saveFile } from './save-file.ts';
import { useGive } from './use-give.ts';
import { useMeant } from './use-meant.ts';

/** Somebody asked for it: also what could still be undone. */
export const AT_ONCE = { isPatient: false, holdBackMs: 0 };

/** Puts the numbers of a refusal into its words. */
function useFilled(): (words: string, facts: Readonly<Record<string, string | number>>) => string {
  const locale = useLocale();
  return (words, facts) => createTranslator({ locale, messages: { words } as Readonly<Record<string, string>> })('words', facts);
}

interface RefusedPartProps {
  readonly item: OutboxItem & { readonly refusal: NonNullable<OutboxItem['refusal']> };
  readonly known: KnownHere;
  /** Told once something was decided and is on disk; the item leaves this list then. */
  readonly decided: (words: string) => void;
}

/** Why something was not taken, and what can be done: nothing of it is ever thrown away here. */
export function RefusedPart({ item, known, decided }: RefusedPartProps) {
  const t = useTranslations('outbox');
  const give = useGive(known);
  const { what, note } = useMeant(known)(item);
  const [isFull, setFull] = useState(false);
  const filled = useFilled();
  const why = refusalSaid(item.refusal, REFUSAL_WORDS, filled);
  // What to do on a phone is of no use to whoever reads the note.
  const whyAtDesk = refusalSaid(item.refusal, { ...REFUSAL_WORDS, onPhone: {} }, filled);

  async function decide(act: () => Promise<void>, words: string): Promise<void> {
    try {
      await act();
      decided(words);
    } catch {
      setFull(true);
    }
  }
  async function again(): Promise<void> {
    await sendOnceMore(await theStore(), item.at);
    announce();
    await sendNow(AT_ONCE).catch(() => undefined);
  }

  return (
    <div className="mt-2 grid gap-2 border-l-4 border-rust pl-3">
      <p className="wrap-anywhere">{what}{note && ` “${note}”`}</p>
      <p className="font-semibold text-rust">{why}</p>
      <OtherLabel item={item} />
      <div className="grid gap-2 sm:flex sm:flex-wrap">
        <button type="button" onClick={() => void decide(again, '')} className={buttonClass('quiet')}>{t('tryAgain')}</button>
        {canBeGiven(item) && <button type="button" onClick={() => void decide(() => give(item, whyAtDesk), t('wasGiven', { about: item.about }))} className={buttonClass(refusedLabel(item) ? 'quiet' : 'main')}>{t('give')}</button>}
        <button type="button" onClick={() => void saveFile(item.id)} className={buttonClass('quiet')}>{t('fileOne')}</button>
      </div>
      <PutAside put={(reason) => decide(async () => {
        await putAside(await theStore(), item.at, reason, Date.now());
        announce();
      }, t('wasPutAside', { about: item.about }))} />
      {isFull && <p role="alert" className="font-semibold text-rust">{t('notKept')}</p>}
    </div>
  );
}

/** The last thing to do, so it takes a reason. */
function PutAside({ put }: { put: (reason: string) => Promise<void> }) {
  const t = useTranslations('outbox');
  const [reason, setReason] = useState('');
  const [isBlank, setBlank] = useState(false);
  return (
    <details>
      <summary className="flex min-h-14 cursor-pointer items-center underline">{t('putAside')}</summary>
      <div className="grid gap-2 pb-2">
        <label className="grid gap-1 font-semibold">
          {t('asideReason')}
          <textarea rows={2} maxLength={1_000} value={reason} onChange={(event) => { setReason(event.target.value); setBlank(false); }} className={`${INPUT} font-normal`} />
        </label>
        {isBlank && <p role="alert" className="font-semibold text-rust">{t('asideBlank')}</p>}
        <button type="button" onClick={() => (reason.trim() === '' ? setBlank(true) : void put(reason.trim()))} className={buttonClass('quiet')}>{t('putAsideNow')}</button>
      </div>
    </details>
  );
}
