import { useTranslations } from 'next-intl';
import { signOut } from './sign-out.action.ts';

export function SignOutButton() {
  const t = useTranslations('account.signIn');
  return (
    <form action={signOut}>
      <button className="min-h-14 cursor-pointer rounded-md border-2 border-current px-5 font-semibold">{t('leave')}</button>
    </form>
  );
}
