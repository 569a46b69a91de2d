import { Workday } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { changeWorkday } from '../../../../../../features/workday/change-workday.action.ts';
import { WorkdayFields } from '../../../../../../features/workday/workday-fields.tsx';
import { sayDay } from '../../../../../../lib/calendar.ts';
import { peopleOf, placesOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { placeChoices } from '../../../../../../lib/place-path.ts';
import { readVersion } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ workdays }) => workdays.change);

export default async function ChangeWorkdayPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [{ body: workday, etag }, { workdays: said }, t, places, people, { today }] = await Promise.all([
    readVersion(apiOf(programme, 'workdays', id), Workday), getMessages(), getTranslations('workdays'), placesOf(programme), peopleOf(programme), workplaceOf(programme),
  ]);
  const day = sayDay(workday.day);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'workdays'), words: said.title }, { href: pageOf(programme, 'workdays', id), words: day }]}
      title={t('changeTitle', { day })}
      action={changeWorkday.bind(null, programme, id, etag)}
      labels={said.fields}
      send={said.save}
    >
      <WorkdayFields workday={workday} places={placeChoices(places)} people={people} today={today} />
    </FormPage>
  );
}
