'use client';

import { useTranslations } from 'next-intl';
import { useEffect } from 'react';
import { ago } from '../../lib/ago.ts';
import { fieldAddress } from '../../lib/field-address.ts';
import { startWorker } from '../../lib/phone/worker.ts';
import { useOutbox } from './use-outbox.ts';

/** Stands above everything while something is only on this phone: how much, since when, and what it waits for. */
export function OutboxLine() {
  const t = useTranslations('outbox');
  const field = useTranslations('field');
  const outbox = useOutbox();
  useEffect(() => void startWorker(), []);

  const items = outbox?.items ?? [];
  const refused = items.filter(({ refusal }) => refusal !== undefined).length;
  const [first] = items;
  return (
    <div role="status" className="outbox-line not-on-paper empty:hidden">
      {first && (
        <div className={`mb-4 flex flex-wrap items-center justify-between gap-x-4 rounded-md border-2 px-3 py-1 font-semibold ${refused > 0 ? 'border-rust bg-rust-wash text-rust' : 'border-on-straw bg-straw text-on-straw'}`}>
          <span>
            {t('line', { n: items.length, when: field('ago', { ...ago(first.keptAt, Date.now()) }) })}{' '}
            {refused > 0 && t('refusedLine', { n: refused })}{' '}
            {outbox?.ending?.why === 'signedOut' && t('signInToSend')}
          </span>
          {outbox?.ending?.why === 'signedOut'
            ? <a href={`/sign-in?next=${encodeURIComponent(fieldAddress('outbox'))}`} className="inline-flex min-h-14 items-center underline">{t('signIn')}</a>
            : <a href={fieldAddress('outbox')} className="inline-flex min-h-14 items-center underline">{t('see')}</a>}
        </div>
      )}
    </div>
  );
}
