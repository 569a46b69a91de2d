import { useMessages } from 'next-intl';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { PasswordField } from '../../ui/form/password-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { signIn } from './sign-in.action.ts';

export function SignInForm({ next }: { next: string }) {
  const { fields, signIn: words } = useMessages().account;
  return (
    <ActionForm action={signIn} labels={fields} send={words.send}>
      <input type="hidden" name="next" value={next} />
      <TextField name="email" type="email" autoComplete="username" />
      <PasswordField name="password" autoComplete="current-password" />
    </ActionForm>
  );
}
