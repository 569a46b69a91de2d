import { useTranslations } from 'next-intl';
import { ButtonLink } from '../ui/button-link.tsx';
import { DoorPage } from '../ui/door-page.tsx';

export default function NotFound() {
  const t = useTranslations('shell');
  return (
    <DoorPage heading={t('nothingHere')} lead={t('nothingHereTodo')}>
      <ButtonLink href="/">{t('toStart')}</ButtonLink>
    </DoorPage>
  );
}
