'use client';

import { useTranslations } from 'next-intl';
import { useState } from 'react';
import { fieldAddress } from '../../lib/field-address.ts';
import type { OutboxItem } from '../../lib/phone/outbox-item.ts';
import { sendNow } from '../../lib/phone/sending.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { Flag } from '../../ui/flag.tsx';
import { PageHeading } from '../../ui/page-heading.tsx';
import { DecidedList } from './decided-list.tsx';
import { DeviceFile } from './device-file.tsx';
import type { KnownHere } from './known-here.ts';
import { PrivateNotice } from './private-notice.tsx';
import { AT_ONCE, RefusedPart } from './refused-part.tsx';
import { SentList } from './sent-list.tsx';
import { StorageNotice } from './storage-notice.tsx';
import { useDecided } from './use-decided.ts';
import { useKnownHere } from './use-known-here.ts';
import { useSaid } from './use-meant.ts';
import { useOutbox } from './use-outbox.ts';
import { LINE, What } from './what.tsx';

/** What is only on this phone, why, and what became of what was sent. */
export function OutboxScreen() {
  const t = useTranslations('outbox');
  const field = useTranslations('field');
  const outbox = useOutbox();
  const known = useKnownHere();
  const [isBusy, setBusy] = useState(false);
  const decided = useDecided();
  const [said, say] = useState('');
  const saidOf = useSaid(known);
  if (!outbox) return <p role="status">{field('opening')}</p>;
  const { items, ending } = outbox;

  async function send(): Promise<void> {
    setBusy(true);
    await sendNow(AT_ONCE).catch(() => undefined);
    setBusy(false);
  }

  return (
    <>
      <p><a href={fieldAddress()} className="inline-flex min-h-14 items-center underline">{field('title')}</a></p>
      <PageHeading>{t('title')}</PageHeading>
      <PrivateNotice />
      <p role="status" className="mb-4 rounded-md border-2 border-juniper bg-lichen p-4 font-semibold text-on-lichen empty:hidden">{said && `✓ ${said}`}</p>
      {items.length === 0 && <p className="rounded-md border-2 border-juniper bg-lichen p-4 text-on-lichen">✓ {decided.length === 0 ? t('none') : t('noneWaits')}</p>}
      {items.length > 0 && (
        <>
          <ul className="outbox-items grid gap-2">{items.map((item) => <WaitingLine key={item.id} item={item} said={saidOf(item)} known={known} decided={say} />)}</ul>
          <div className="mt-3 grid gap-2">
            <button type="button" onClick={() => void send()} className={buttonClass()}>{isBusy ? t('sending') : t('send')}</button>
            <p role="status" className="empty:hidden">{!isBusy && ending?.why === 'unheard' ? t('unheard') : ''}</p>
          </div>
        </>
      )}
      <DecidedList items={decided} known={known} />
      <SentList known={known} />
      <StorageNotice />
      <DeviceFile hasItems={items.length + decided.length > 0} />
    </>
  );
}

interface WaitingLineProps {
  readonly item: OutboxItem;
  readonly said: string | undefined;
  readonly known: KnownHere;
  readonly decided: (words: string) => void;
}

function WaitingLine({ item, said, known, decided }: WaitingLineProps) {
  const t = useTranslations('outbox');
  const { refusal } = item;
  return (
    <li className={LINE}>
      <div className="flex flex-wrap items-center justify-between gap-2">
        {/* Where it was refused, its words stand below. */}
        <What item={item} at={item.keptAt} said={refusal ? undefined : said} />
        {refusal ? <Flag tone="grave">{t('refused')}</Flag> : <Flag tone="look">{t('waiting')}</Flag>}
      </div>
      {refusal && <RefusedPart item={{ ...item, refusal }} known={known} decided={decided} />}
    </li>
  );
}
