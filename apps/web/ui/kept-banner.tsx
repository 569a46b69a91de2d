import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { buttonClass } from './button-class.ts';

interface KeptBannerProps {
  /** Nothing while nothing was told, or while it is being kept. */
  readonly state: 'busy' | 'kept' | 'undone' | 'failed' | undefined;
  /** What was kept or taken back, in a sentence. */
  readonly title: string;
  readonly detail?: ReactNode;
  /** What the books make of it; not told where they stay the same. */
  readonly books?: { readonly before: number; readonly after: number } | undefined;
  readonly undo?: (() => void) | undefined;
  /** The way on, such as back to the scanner. */
  readonly next?: ReactNode;
}

/** Says in words, colour and place that the last thing told is on the phone, what the books will make of it, and how to take it back. */
export function KeptBanner({ state, title, detail, books, undo, next }: KeptBannerProps) {
  const t = useTranslations('ui.kept');
  return (
    // Always there, so that what appears in it is read out.
    <div role={state === 'failed' ? 'alert' : 'status'} className="mx-auto max-w-md empty:hidden">
      {state === 'failed' && <p className="mb-2 rounded-md border-2 border-rust bg-rust-wash p-3 font-semibold text-rust">{t('failed')}</p>}
      {state === 'undone' && <p className="mb-2 rounded-md border-2 border-line-strong bg-sheet px-3 py-2">{title}</p>}
      {state === 'kept' && (
        <div className="kept-banner mb-2 flex flex-wrap items-center justify-between gap-2 rounded-md border-2 border-juniper bg-juniper px-3 py-1 text-on-juniper">
          <div className="min-w-0 flex-1 leading-tight">
            <strong>✓ {title}</strong>
            {detail}
            {books && books.before !== books.after && <span className="block text-sm tabular-nums">{t('books', { before: books.before, after: books.after })}</span>}
          </div>
          {undo && <button type="button" onClick={undo} className={`${buttonClass('quiet')} shrink-0`}>{t('undo')}</button>}
          {next}
        </div>
      )}
    </div>
  );
}
