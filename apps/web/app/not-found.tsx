import { useTranslations } from 'next-intl';
import { buttonClass } from '../ui/button-class.ts';
import { DoorPage } from '../ui/door-page.tsx';

export default function NotFound() {
  const t = useTranslations('shell');
  return (
    <DoorPage heading={t('nothingHere')} lead={t('nothingHereTodo')}>
      {/* It stands around every page, the one that a phone keeps too: a plain link weighs nothing. */}
      <a href="/" className={buttonClass()}>{t('toStart')}</a>
    </DoorPage>
  );
}
