import { KEY_SCOPES, type Partner } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesOf } from '../../ui/form/choices.ts';
import { TextField } from '../../ui/form/text-field.tsx';
import { TickField } from '../../ui/form/tick-field.tsx';
import { makeKey } from './make-key.action.ts';

export function KeyForm({ programme, keyId, partners }: { programme: string; keyId: string; partners: readonly Partner[] }) {
  const said = useMessages().keys;
  return (
    <ActionForm action={makeKey.bind(null, programme)} labels={said.fields} send={said.send} madeWords={said.made}>
      <input type="hidden" name="id" value={keyId} />
      <TextField name="name" hint={said.hints.name} />
      {partners.length > 0 && <ChoiceField name="partnerId" isOptional hint={said.hints.partnerId} choices={choicesOf(partners)} />}
      <TextField name="days" value="365" hint={said.hints.days} />
      <fieldset className="grid gap-2 sm:grid-cols-2">
        <legend className="mb-2 font-semibold">{said.fields.scopes}</legend>
        {KEY_SCOPES.map((scope) => <TickField key={scope} name={`scopes/${scope}`} />)}
      </fieldset>
    </ActionForm>
  );
}
