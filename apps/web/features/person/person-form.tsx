import type { Person } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { TickField } from '../../ui/form/tick-field.tsx';
import { changePerson } from './change-person.action.ts';

interface PersonFormProps {
  readonly programme: string;
  readonly person: Person;
  readonly etag: string;
  /** Coordinators and owners are for owners to choose. */
  readonly isOwner: boolean;
}

export function PersonForm({ programme, person, etag, isOwner }: PersonFormProps) {
  const said = useMessages().people;
  const isOwn = person.hasAccount === true && person.role !== 'partner';
  return (
    <ActionForm action={changePerson.bind(null, programme, person.id, etag)} labels={said.fields} send={said.save}>
      <TextField name="name" value={person.name} />
      {isOwn && isOwner && <RadioField name="role" value={person.role} choices={(['volunteer', 'coordinator', 'owner'] as const).map((role) => ({ value: role, words: said.roles[role] }))} />}
      {isOwn && (
        <>
          <input type="hidden" name="asksSeesExact" value="" />
          <TickField name="seesExact" isTicked={person.seesExact ?? false} hint={said.hints.seesExact} />
        </>
      )}
    </ActionForm>
  );
}
