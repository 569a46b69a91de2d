import type { Permission } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Flag } from '../../ui/flag.tsx';

/** When a permission holds, and whether that is over. */
export function PermissionTime({ permission: { validFrom, validUntil }, today }: { permission: Permission; today: string }) {
  const t = useTranslations('permissions');
  if (validUntil === null) return t('fromOn', { from: sayDay(validFrom) });
  return (
    <>
      {t('between', { from: sayDay(validFrom), until: sayDay(validUntil) })} {validUntil < today && <Flag tone="look">{t('ended')}</Flag>}
    </>
  );
}
