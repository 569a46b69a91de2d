import { useMessages } from 'next-intl';
import { PasswordField } from '../../ui/form/password-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

/** A new account: what the person is called, and what they sign in with. */
export function AccountFields({ prefix = '' }: { prefix?: string }) {
  const { hints } = useMessages().account;
  return (
    <>
      <TextField name={`${prefix}name`} autoComplete="name" hint={hints.name} />
      <TextField name={`${prefix}email`} type="email" autoComplete="username" />
      <PasswordField name={`${prefix}password`} autoComplete="new-password" hint={hints.password} />
    </>
  );
}
