import type { Device } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { putAside } from './put-aside.action.ts';

/** @param devices those that are not put aside yet */
export function PutAsideForm({ programme, devices }: { programme: string; devices: readonly Device[] }) {
  const { phones: said } = useMessages();
  const t = useTranslations('phones');
  const choices = devices.map(({ id, name, person, lastHeardAt }) => ({
    value: id, words: `${name ?? t('unnamed', { person })}, ${t('heard', { when: sayDay(lastHeardAt.slice(0, 10)) })}`,
  }));
  return (
    <ActionForm action={putAside.bind(null, programme)} labels={said.fields} send={said.send} look="quiet">
      <ChoiceField name="device" choices={choices} />
      <TextField name="reason" hint={said.hints.reason} />
    </ActionForm>
  );
}
