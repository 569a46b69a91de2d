import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { Mark } from './mark.tsx';

/** A page before one is inside: signing in, accepting an invitation, setting up. */
export function DoorPage({ heading, lead, children }: { heading: ReactNode; lead?: ReactNode; children: ReactNode }) {
  const t = useTranslations('shell');
  return (
    <div className="mx-auto grid min-h-dvh max-w-xl content-start px-4 py-8 sm:content-center sm:py-16">
      <header className="mb-4 flex items-center gap-3 text-lg font-semibold">
        <Mark />
        {t('name')}
      </header>
      <main id="main" tabIndex={-1} className="rounded-lg border border-line bg-sheet p-6 outline-none sm:p-10">
        <h1 className="text-2xl">{heading}</h1>
        <div className="row-of-holes mt-4 mb-6" aria-hidden />
        {lead && <div className="mb-6 text-ink-soft">{lead}</div>}
        {children}
      </main>
    </div>
  );
}
