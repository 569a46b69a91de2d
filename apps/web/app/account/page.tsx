import { getMessages } from 'next-intl/server';
import { changePassword } from '../../features/account/change-password.action.ts';
import { SignOutButton } from '../../features/account/sign-out-button.tsx';
import { titled } from '../../lib/titled.ts';
import { meNow } from '../../lib/workplace.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { DoorPage } from '../../ui/door-page.tsx';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { PasswordField } from '../../ui/form/password-field.tsx';

export const generateMetadata = titled(({ account }) => account.own.title);

export default async function AccountPage() {
  const [me, { account: said }] = await Promise.all([meNow(), getMessages()]);
  return (
    <DoorPage heading={me.name} lead={me.email}>
      <h2 className="mb-4 text-lg">{said.own.change}</h2>
      <ActionForm action={changePassword} labels={said.own.fields} send={said.own.send}>
        <PasswordField name="currentPassword" autoComplete="current-password" />
        <PasswordField name="newPassword" autoComplete="new-password" hint={said.hints.password} />
      </ActionForm>
      <div className="mt-10 flex flex-wrap gap-3 border-t border-line pt-6">
        <ButtonLink look="quiet" href="/programmes">{said.own.back}</ButtonLink>
        <SignOutButton />
      </div>
    </DoorPage>
  );
}
