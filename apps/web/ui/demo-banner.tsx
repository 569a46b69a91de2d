import { useTranslations } from 'next-intl';

/** Above every page of a programme that was entered as an example. */
export function DemoBanner() {
  const t = useTranslations('ui');
  return (
    <aside aria-label={t('demo')} className="border-b border-on-straw bg-straw px-4 py-2 text-sm text-on-straw sm:px-8">
      <strong>{t('demo')}</strong> {t('demoMore')}
    </aside>
  );
}
