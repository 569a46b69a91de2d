import { Climate, Place } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { setAsideReading } from '../../../../../../../features/climate/set-aside.action.ts';
import { sayMoment } from '../../../../../../../lib/calendar.ts';
import { pageOf } from '../../../../../../../lib/page-address.ts';
import { read } from '../../../../../../../lib/read.ts';
import { titled } from '../../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../../ui/form/form-page.tsx';
import { TextField } from '../../../../../../../ui/form/text-field.tsx';

export const generateMetadata = titled(({ climate }) => climate.setAsideTitle);

interface SetAsidePageProps {
  readonly params: Promise<{ programme: string; id: string; readingId: string }>;
  /** The days in which it was listed. */
  readonly searchParams: Promise<{ from?: string; until?: string }>;
}

export default async function SetAsidePage({ params, searchParams }: SetAsidePageProps) {
  const [{ programme, id, readingId }, { from, until }] = await Promise.all([params, searchParams]);
  const range = new URLSearchParams({ ...(from ? { from } : {}), ...(until ? { until } : {}) });
  const [place, { latest }, { zone }, { climate: said, places }, t] = await Promise.all([
    read(apiOf(programme, 'places', id), Place), read(`${apiOf(programme, 'places', id, 'climate')}?${range}`, Climate), workplaceOf(programme), getMessages(), getTranslations('climate'),
  ]);
  const reading = latest.find((one) => one.id === readingId);
  if (!reading) notFound();
  const { temperatureC, humidityPercent, takenAt } = reading;
  const what = [temperatureC !== null && `${temperatureC} °C`, humidityPercent !== null && `${humidityPercent} %`].filter(Boolean).join(', ');
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'places'), words: places.title }, { href: pageOf(programme, 'places', id), words: place.name }, { href: pageOf(programme, 'places', id, 'climate'), words: said.title }]}
      title={said.setAsideTitle}
      lead={t('setAsideLead', { when: sayMoment(takenAt, zone), name: place.name, what })}
      action={setAsideReading.bind(null, programme, id, readingId)}
      labels={said.fields}
      send={said.setAsideSend}
    >
      <TextField name="reason" hint={said.hints.reason} />
    </FormPage>
  );
}
