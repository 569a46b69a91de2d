import { useTranslations } from 'next-intl';
import { ButtonLink } from '../ui/button-link.tsx';
import { DoorPage } from '../ui/door-page.tsx';

export default function Forbidden() {
  const t = useTranslations('shell');
  return (
    <DoorPage heading={t('notAllowed')} lead={t('notAllowedTodo')}>
      <ButtonLink href="/">{t('toStart')}</ButtonLink>
    </DoorPage>
  );
}
