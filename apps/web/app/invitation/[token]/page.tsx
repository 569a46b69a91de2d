import { InvitationSeen, Me } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { AccountFields } from '../../../features/account/account-fields.tsx';
import { acceptNewly } from '../../../features/account/accept-newly.action.ts';
import { acceptWithAccount } from '../../../features/account/accept-with-account.action.ts';
import { readIfAllowed } from '../../../lib/read-if-allowed.ts';
import { titled } from '../../../lib/titled.ts';
import { ButtonLink } from '../../../ui/button-link.tsx';
import { DoorPage } from '../../../ui/door-page.tsx';
import { ActionForm } from '../../../ui/form/action-form.tsx';

export const generateMetadata = titled(({ account }) => account.invitation.title);

export default async function InvitationPage({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params;
  const [invitation, me, { account: said, words }, t] = await Promise.all([
    readIfAllowed(`/api/v1/invitations/${encodeURIComponent(token)}`, InvitationSeen), readIfAllowed('/api/v1/me', Me), getMessages(), getTranslations('account.invitation'),
  ]);
  if (!invitation) return <DoorPage heading={t('closed')} lead={t('closedTodo')}><ButtonLink href="/sign-in">{said.signIn.title}</ButtonLink></DoorPage>;

  const { programme, role } = invitation.body;
  const lead = t('lead', { programme, role: words.role[role] });
  if (me) {
    return (
      <DoorPage heading={t('title')} lead={lead}>
        <ActionForm action={acceptWithAccount.bind(null, token)} send={t('acceptAs', { name: me.body.name })} />
      </DoorPage>
    );
  }
  return (
    <DoorPage heading={t('title')} lead={lead}>
      <ActionForm action={acceptNewly.bind(null, token)} labels={said.fields} send={t('accept')}>
        <AccountFields />
      </ActionForm>
      <p className="mt-8 text-sm text-ink-soft">{t('haveAccount')}</p>
      <div className="mt-2"><ButtonLink look="quiet" href={`/sign-in?next=${encodeURIComponent(`/invitation/${token}`)}`}>{said.signIn.title}</ButtonLink></div>
    </DoorPage>
  );
}
