import { useTranslations } from 'next-intl';
import { fieldAddress } from '../../lib/field-address.ts';
import { newDoubts } from '../../lib/phone/doubts.ts';
import { useKept } from '../../lib/phone/use-kept.ts';

/** Says that something sent from here came out doubtful, until somebody has looked at it. */
export function DoubtsNotice() {
  const t = useTranslations('field');
  const n = useKept(newDoubts, 0);
  if (n === 0) return null;
  return (
    <p className="mb-4 flex flex-wrap items-center justify-between gap-x-4 rounded-md border-2 border-on-straw bg-straw px-3 py-1 font-semibold text-on-straw">
      ! {t('doubts', { n })} <a href={fieldAddress('outbox')} className="inline-flex min-h-14 items-center underline">{t('seeDoubts')}</a>
    </p>
  );
}
