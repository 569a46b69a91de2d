import { ResetLinkSeen } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { resetPassword } from '../../../features/account/reset-password.action.ts';
import { readIfAllowed } from '../../../lib/read-if-allowed.ts';
import { titled } from '../../../lib/titled.ts';
import { ButtonLink } from '../../../ui/button-link.tsx';
import { DoorPage } from '../../../ui/door-page.tsx';
import { ActionForm } from '../../../ui/form/action-form.tsx';
import { PasswordField } from '../../../ui/form/password-field.tsx';

export const generateMetadata = titled(({ account }) => account.reset.title);

export default async function ResetPage({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params;
  const [link, { account: said }, t] = await Promise.all([readIfAllowed(`/api/v1/reset-links/${encodeURIComponent(token)}`, ResetLinkSeen), getMessages(), getTranslations('account.reset')]);
  if (!link) return <DoorPage heading={t('closed')} lead={t('closedTodo')}><ButtonLink href="/sign-in">{said.signIn.title}</ButtonLink></DoorPage>;
  return (
    <DoorPage heading={t('title')} lead={t('lead', { name: link.body.name })}>
      <ActionForm action={resetPassword.bind(null, token)} labels={said.fields} send={t('send')}>
        <PasswordField name="password" autoComplete="new-password" hint={said.hints.password} />
      </ActionForm>
    </DoorPage>
  );
}
