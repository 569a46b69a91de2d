import { Place } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { writeReading } from '../../../../../../../features/climate/write-reading.action.ts';
import { minuteOfDay } from '../../../../../../../lib/calendar.ts';
import { newId } from '../../../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../../../lib/page-address.ts';
import { read } from '../../../../../../../lib/read.ts';
import { titled } from '../../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../../lib/workplace.ts';
import { choicesFrom } from '../../../../../../../ui/form/choices.ts';
import { DayField } from '../../../../../../../ui/form/day-field.tsx';
import { FormPage } from '../../../../../../../ui/form/form-page.tsx';
import { RadioField } from '../../../../../../../ui/form/radio-field.tsx';
import { TextField } from '../../../../../../../ui/form/text-field.tsx';

export const generateMetadata = titled(({ climate }) => climate.add);

export default async function NewReadingPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [place, { today, zone }, { climate: said, places }, t] = await Promise.all([read(apiOf(programme, 'places', id), Place), workplaceOf(programme), getMessages(), getTranslations('climate')]);
  const minute = minuteOfDay(zone);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'places'), words: places.title }, { href: pageOf(programme, 'places', id), words: place.name }, { href: pageOf(programme, 'places', id, 'climate'), words: said.title }]}
      title={t('addTitle', { name: place.name })}
      action={writeReading.bind(null, programme, id, zone)}
      labels={said.fields}
      send={said.save}
      newId={newId()}
    >
      <TextField name="temperature" isOptional hint={said.hints.temperature} />
      <RadioField name="unit" value="C" choices={choicesFrom(said.units)} />
      <TextField name="humidity" keypad="decimal" isOptional hint={said.hints.humidity} />
      <DayField name="day" today={today} />
      <TextField name="time" value={`${Math.floor(minute / 60)}:${String(minute % 60).padStart(2, '0')}`} hint={said.hints.time} />
    </FormPage>
  );
}
