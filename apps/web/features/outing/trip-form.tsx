import { useMessages, useTranslations } from 'next-intl';
import { sayDay, today } from '../../lib/calendar.ts';
import { keepHere } from '../../lib/phone/device.ts';
import { type Made, rememberMade } from '../../lib/phone/made.ts';
import { theStore } from '../../lib/phone/store.ts';
import { newId } from '../../lib/new-id.ts';
import { Caution } from '../../ui/caution.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesOf } from '../../ui/form/choices.ts';
import { DayField } from '../../ui/form/day-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { outingSaid } from './outing-said.ts';
import { tripWork } from './outing-work.ts';
import { ToldForm } from './told-form.tsx';
import type { Outing } from './use-outing.ts';

interface TripFormProps {
  readonly programme: string;
  readonly outing: Outing;
  /** Where it goes to, if that is known. */
  readonly standId: string | undefined;
  readonly begun: (tripId: string, made: Made) => void;
}

/** Day, stand and who went. Kept at once, so that a phone that dies on the way loses no more than the tree in hand. */
export function TripForm({ programme, outing: { pack }, standId, begun }: TripFormProps) {
  const { fields, hints, caution } = useMessages().trips;
  const t = useTranslations('outing');

  async function keep(form: FormData) {
    const { told, faults } = outingSaid(form);
    if (faults.length > 0) return faults;
    const id = newId();
    const stand = pack.stands.find((one) => one.id === told.standId)?.name ?? '';
    await keepHere(programme, [tripWork(programme, { ...told, id }, t('name', { stand, day: sayDay(told.wentOn) }))]);
    const { wentOn, standId } = told;
    begun(id, await rememberMade(await theStore(), programme, { trips: [{ id, wentOn, standId }] }));
    return [];
  }

  return (
    <ToldForm labels={fields} send={t('begin')} keep={keep}>
      <DayField name="wentOn" today={today(pack.programme.zone)} />
      <ChoiceField name="standId" choices={choicesOf(pack.stands)} value={standId ?? (pack.stands.length === 1 ? pack.stands[0]?.id : undefined)} />
      <ChoiceField name="ledBy" isOptional choices={choicesOf(pack.people)} />
      <TextField name="people" keypad="numeric" isOptional hint={hints.people} />
      <Caution>{caution}</Caution>
    </ToldForm>
  );
}
