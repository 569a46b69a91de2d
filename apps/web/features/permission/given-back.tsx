import type { Permission } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { Flag } from '../../ui/flag.tsx';

/** Plants owed back, and how many have gone. */
export function GivenBack({ permission: { plantsOwedBack: owed, givenBack: given } }: { permission: Permission }) {
  const t = useTranslations('permissions');
  if (owed === 0 && given === 0) return t('nothingOwed');
  return (
    <>
      {t('givenBackOf', { given, owed })} {given >= owed && <Flag tone="good">{t('allGivenBack')}</Flag>}
    </>
  );
}
