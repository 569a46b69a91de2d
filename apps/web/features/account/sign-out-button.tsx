import { useTranslations } from 'next-intl';
import { SignOutForm } from './sign-out-form.tsx';

export function SignOutButton() {
  const t = useTranslations('account.signIn');
  return <SignOutForm leave={t('leave')} unsentStays={t('unsentStays')} />;
}
