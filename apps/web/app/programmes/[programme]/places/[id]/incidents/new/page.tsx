import { Place } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { IncidentFields } from '../../../../../../../features/incident/incident-fields.tsx';
import { writeIncident } from '../../../../../../../features/incident/write-incident.action.ts';
import { peopleOf } from '../../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../../lib/page-address.ts';
import { read } from '../../../../../../../lib/read.ts';
import { titled } from '../../../../../../../lib/titled.ts';
import { workdayChoices } from '../../../../../../../lib/workday-choices.ts';
import { apiOf, workplaceOf } from '../../../../../../../lib/workplace.ts';
import { Caution } from '../../../../../../../ui/caution.tsx';
import { EntryForm } from '../../../../../../../ui/ledger/entry-form.tsx';
import { PageHeading } from '../../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ incidents }) => incidents.add);

export default async function NewIncidentPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [place, workplace, people, { incidents: said, places }, t] = await Promise.all([
    read(apiOf(programme, 'places', id), Place), workplaceOf(programme), peopleOf(programme), getMessages(), getTranslations('incidents'),
  ]);
  const { today, zone, me } = workplace;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'places'), words: places.title }, { href: pageOf(programme, 'places', id), words: place.name }]} />
      <PageHeading lead={said.addLead}>{t('addTitle', { name: place.name })}</PageHeading>
      <div className="grid gap-6">
        <Caution>{said.caution}</Caution>
        <EntryForm
          action={writeIncident.bind(null, programme, id)} fields={said.fields} send={said.send} today={today} zone={zone}
          people={people.filter((person) => person.id !== me.personId)} workdays={await workdayChoices(programme, today)}
        >
          <IncidentFields />
        </EntryForm>
      </div>
    </>
  );
}
