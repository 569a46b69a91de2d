import { getTranslations } from 'next-intl/server';
import { SignInForm } from '../../features/account/sign-in-form.tsx';
import { titled } from '../../lib/titled.ts';
import { wayBack } from '../../lib/way-back.ts';
import { DoorPage } from '../../ui/door-page.tsx';

export const generateMetadata = titled(({ account }) => account.signIn.title);

export default async function SignInPage({ searchParams }: { searchParams: Promise<{ next?: string; left?: string; reset?: string }> }) {
  const { next, left, reset } = await searchParams;
  const t = await getTranslations('account.signIn');
  const said = left !== undefined ? t('left') : reset !== undefined ? t('reset') : undefined;
  return (
    <DoorPage heading={t('title')} lead={said && <p role="status">{said}</p>}>
      <SignInForm next={wayBack(next)} />
      <p className="mt-8 text-sm text-ink-soft">{t('forgot')}</p>
      <p className="mt-2 text-sm text-ink-soft">{t('newHere')}</p>
    </DoorPage>
  );
}
