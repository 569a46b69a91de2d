import type { Partner, Stand } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesFrom, choicesOf } from '../../ui/form/choices.ts';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

export function StandFields({ stand, partners }: { stand?: Stand; partners: readonly Partner[] }) {
  const { stands: said, words } = useMessages();
  return (
    <>
      <TextField name="name" value={stand?.name} hint={said.hints.name} />
      {partners.length > 0 && <ChoiceField name="partnerId" isOptional value={stand?.partnerId} choices={choicesOf(partners)} />}
      <RadioField name="sensitivity" value={stand?.sensitivity ?? 0} choices={choicesFrom(words.sensitivity)} hint={said.hints.sensitivity} />
      <ProseField name="note" isOptional value={stand?.note} hint={said.hints.note} />
    </>
  );
}
