import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';

/** What can hurt people or plants, short, beside the action. */
export function Caution({ children }: { children: ReactNode }) {
  const t = useTranslations('ui');
  return (
    <aside className="flex max-w-prose gap-3 rounded-md border-2 border-on-straw bg-straw p-4 text-on-straw" aria-label={t('caution')}>
      <svg viewBox="0 0 24 24" className="mt-0.5 size-6 shrink-0" aria-hidden>
        <path d="M12 3 22 20.500H2Z" fill="none" stroke="currentColor" strokeWidth="2" strokeLinejoin="round" />
        <path d="M12 9.500v5M12 17v.6" stroke="currentColor" strokeWidth="2.4" strokeLinecap="round" />
      </svg>
      <div className="text-sm">
        <strong className="block text-base">{t('caution')}</strong>
        {children}
      </div>
    </aside>
  );
}
