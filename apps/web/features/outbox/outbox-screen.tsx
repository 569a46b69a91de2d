'use client';

import { useTranslations } from 'next-intl';
import { useEffect, useState } from 'react';
import { ago } from '../../lib/ago.ts';
import { fieldAddress } from '../../lib/field-address.ts';
import { announce, onNews } from '../../lib/phone/news.ts';
import type { OutboxItem, SentItem } from '../../lib/phone/outbox-item.ts';
import { sentLately, tryAgain } from '../../lib/phone/outbox.ts';
import { sendNow } from '../../lib/phone/sending.ts';
import { theStore } from '../../lib/phone/store.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { Flag } from '../../ui/flag.tsx';
import { PageHeading } from '../../ui/page-heading.tsx';
import { DeviceFile } from './device-file.tsx';
import { OtherLabel } from './other-label.tsx';
import { StorageNotice } from './storage-notice.tsx';
import { useOutbox } from './use-outbox.ts';

/** So many of what was sent are shown. */
const SHOWN = 50;

/** Somebody asked for it: also what could still be undone. */
const AT_ONCE = { isPatient: false, holdBackMs: 0 };

/** What is only on this phone, why, and what became of what was sent. */
export function OutboxScreen() {
  const t = useTranslations('outbox');
  const field = useTranslations('field');
  const outbox = useOutbox();
  const sent = useSent();
  const [isBusy, setBusy] = useState(false);
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
      {items.length === 0 && <p className="rounded-md border-2 border-juniper bg-lichen p-4 text-on-lichen">✓ {t('none')}</p>}
      {items.length > 0 && (
        <>
          <ul className="grid gap-2">{items.map((item) => <WaitingLine key={item.id} item={item} />)}</ul>
          <div className="mt-3 grid gap-2">
            <button type="button" onClick={() => void send()} className={buttonClass()}>{isBusy ? t('sending') : t('send')}</button>
            <p role="status" className="empty:hidden">{!isBusy && ending?.why === 'unheard' ? t('unheard') : ''}</p>
          </div>
        </>
      )}
      <StorageNotice />
      <DeviceFile hasItems={items.length > 0} />
      {sent.length > 0 && (
        <section aria-labelledby="sent" className="mt-8">
          <h2 id="sent" className="text-xl">{t('sent')}</h2>
          <p className="text-sm text-ink-soft">{t('sentLead')}</p>
          <ul className="mt-2 grid gap-2">{sent.slice(0, SHOWN).map((item) => <SentLine key={item.id} item={item} />)}</ul>
        </section>
      )}
    </>
  );
}

const LINE = 'rounded-md border border-line bg-sheet px-3 py-2';

function What({ item: { about, work, author, was = [] }, at }: { item: OutboxItem | SentItem; at: number }) {
  const t = useTranslations('outbox');
  const field = useTranslations('field');
  const kinds = useTranslations('entries.kinds');
  const what = work.kind === 'entry' ? kinds(work.entry.saying.kind) : t(`kinds.${work.kind === 'record' ? recordKind(work.path) : work.kind}`);
  return (
    <span>
      <strong>{about}</strong> {what}
      {was.length > 0 && <span className="block text-sm">{t('was', { labels: was.join(', ') })}</span>}
      <span className="block text-sm text-ink-soft">{t('by', { name: author.name, when: field('ago', { ...ago(at, Date.now()) }) })}</span>
    </span>
  );
}

/** The noun at the end of its address. */
function recordKind(path: string) {
  const noun = path.split('/').at(-1);
  return RECORDS.find((one) => one === noun) ?? 'record';
}

const RECORDS = ['trips', 'donor-trees', 'bundles', 'sealed-place', 'labels'] as const;

function WaitingLine({ item }: { item: OutboxItem }) {
  const t = useTranslations('outbox');
  const { refusal } = item;
  async function again(): Promise<void> {
    await tryAgain(await theStore(), [item.at]);
    announce();
    await sendNow(AT_ONCE).catch(() => undefined);
  }
  return (
    <li className={LINE}>
      <div className="flex flex-wrap items-center justify-between gap-2">
        <What item={item} at={item.keptAt} />
        {refusal ? <Flag tone="grave">{t('refused')}</Flag> : <Flag tone="look">{t('waiting')}</Flag>}
      </div>
      {refusal && (
        <div className="mt-2 grid gap-2 border-l-4 border-rust pl-3">
          <p className="font-semibold text-rust">{refusal.title}. {refusal.detail}</p>
          <OtherLabel item={item} />
          <button type="button" onClick={() => void again()} className={buttonClass('quiet')}>{t('tryAgain')}</button>
        </div>
      )}
    </li>
  );
}

function SentLine({ item }: { item: SentItem }) {
  const t = useTranslations('outbox');
  const flags = useTranslations('entries.flags');
  const status = { written: 'inBooks', already: 'already', waiting: 'waits', refused: 'refused' } as const;
  return (
    <li className={LINE}>
      <div className="flex flex-wrap items-center justify-between gap-2">
        <What item={item} at={item.sentAt} />
        <Flag tone={item.status === 'waiting' ? 'look' : 'good'}>{t(status[item.status])}</Flag>
      </div>
      {item.flags.map(({ code, n }) => <p key={code} className="text-sm">! {flags(code, { n: n ?? 0 })}</p>)}
    </li>
  );
}

function useSent(): readonly SentItem[] {
  const [sent, setSent] = useState<readonly SentItem[]>([]);
  useEffect(() => {
    const look = (): void => void theStore().then(sentLately).then(setSent, () => undefined);
    look();
    return onNews(look);
  }, []);
  return sent;
}
