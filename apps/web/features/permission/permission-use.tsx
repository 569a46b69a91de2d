import type { Permission } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { Flag } from '../../ui/flag.tsx';

/** How much of a permission trips have used up. */
export function PermissionUse({ permission: { used, quota } }: { permission: Permission }) {
  const t = useTranslations('permissions');
  if (quota === null) return t('usedFreely', { used });
  return (
    <>
      {t('usedOf', { used, quota })} {used > quota ? <Flag tone="grave">{t('over')}</Flag> : <span className="text-ink-soft">({t('left', { n: quota - used })})</span>}
    </>
  );
}
