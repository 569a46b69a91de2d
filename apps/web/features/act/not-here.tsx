import { useTranslations } from 'next-intl';
import { PageHeading } from '../../ui/page-heading.tsx';

/** What was asked for was never packed on this phone. */
export function NotHere({ backHref }: { backHref: string }) {
  const t = useTranslations('act');
  const field = useTranslations('field');
  return (
    <>
      <PageHeading>{t('notHere')}</PageHeading>
      <p role="alert" className="max-w-prose">{field('unknown')}</p>
      <p className="mt-4"><a href={backHref} className="inline-flex min-h-14 items-center underline">{t('back')}</a></p>
    </>
  );
}
