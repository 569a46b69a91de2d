import { getMessages } from 'next-intl/server';
import { addWorkday } from '../../../../../features/workday/add-workday.action.ts';
import { WorkdayFields } from '../../../../../features/workday/workday-fields.tsx';
import { peopleOf, placesOf } from '../../../../../lib/lists.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { placeChoices } from '../../../../../lib/place-path.ts';
import { titled } from '../../../../../lib/titled.ts';
import { workplaceOf } from '../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ workdays }) => workdays.addTitle);

export default async function NewWorkdayPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ workdays: said }, places, people, { today }] = await Promise.all([getMessages(), placesOf(programme), peopleOf(programme), workplaceOf(programme)]);
  return (
    <FormPage trail={[{ href: pageOf(programme, 'workdays'), words: said.title }]} title={said.addTitle} action={addWorkday.bind(null, programme)} labels={said.fields} send={said.save} newId={newId()}>
      <WorkdayFields places={placeChoices(places)} people={people} today={today} />
    </FormPage>
  );
}
