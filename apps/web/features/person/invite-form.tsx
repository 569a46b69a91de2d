import type { Partner, Person } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesOf } from '../../ui/form/choices.ts';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { TickField } from '../../ui/form/tick-field.tsx';
import { invite } from './invite.action.ts';

interface InviteFormProps {
  readonly programme: string;
  readonly invitationId: string;
  /** Coordinators and owners are for owners to choose. */
  readonly isOwner: boolean;
  readonly partners: readonly Partner[];
  /** People who work here without an account. */
  readonly byName: readonly Person[];
  readonly personId: string | undefined;
}

export function InviteForm({ programme, invitationId, isOwner, partners, byName, personId }: InviteFormProps) {
  const said = useMessages().people;
  const roles = (['volunteer', 'coordinator', 'owner', 'partner'] as const).filter((role) => (isOwner || role === 'volunteer' || role === 'partner') && (role !== 'partner' || partners.length > 0));
  return (
    <ActionForm action={invite.bind(null, programme)} labels={said.fields} send={said.inviteSend} madeWords={said.made}>
      <input type="hidden" name="id" value={invitationId} />
      <TextField name="forName" hint={said.hints.forName} value={byName.find(({ id }) => id === personId)?.name} />
      {byName.length > 0 && <ChoiceField name="personId" isOptional value={personId} hint={said.hints.personId} choices={choicesOf(byName)} />}
      <RadioField name="role" value="volunteer" choices={roles.map((role) => ({ value: role, words: said.roles[role] }))} />
      {partners.length > 0 && <ChoiceField name="partnerId" isOptional hint={said.hints.partnerId} choices={choicesOf(partners)} />}
      <TickField name="seesExact" hint={said.hints.seesExact} />
    </ActionForm>
  );
}
