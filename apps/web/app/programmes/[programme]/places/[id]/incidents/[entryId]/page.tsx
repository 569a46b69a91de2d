import { IncidentShown, Place } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { endIncident, mendIncident, withdrawIncident } from '../../../../../../../features/incident/correct-incident.action.ts';
import { CorrectionForm } from '../../../../../../../features/incident/correction-form.tsx';
import { IncidentFields } from '../../../../../../../features/incident/incident-fields.tsx';
import { SAYING } from '../../../../../../../lib/entry-said.ts';
import { pageOf } from '../../../../../../../lib/page-address.ts';
import { read } from '../../../../../../../lib/read.ts';
import { titled } from '../../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../../lib/workplace.ts';
import { DayField } from '../../../../../../../ui/form/day-field.tsx';
import { TextField } from '../../../../../../../ui/form/text-field.tsx';
import { EntryForm } from '../../../../../../../ui/ledger/entry-form.tsx';
import { PageHeading } from '../../../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../../../ui/section.tsx';
import { Trail } from '../../../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ incidents }) => incidents.title);

/** It is right again, was otherwise than written, or never happened. */
export default async function IncidentPage({ params }: { params: Promise<{ programme: string; id: string; entryId: string }> }) {
  const { programme, id, entryId } = await params;
  const [place, was, workplace, { incidents: said, places, entries }, t] = await Promise.all([
    read(apiOf(programme, 'places', id), Place), read(apiOf(programme, 'incidents', entryId), IncidentShown), workplaceOf(programme), getMessages(), getTranslations('incidents'),
  ]);
  const target = { programme, placeId: id, was };
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'places'), words: places.title }, { href: pageOf(programme, 'places', id), words: place.name }]} />
      <PageHeading kind={said.title} lead={was.mayMend ? undefined : said.notYours}>{t('oneTitle', { what: entries.incidents[was.what], place: was.placeName })}</PageHeading>
      {was.mayMend && (
        <>
          {was.until === null && (
            <Section heading={said.over} lead={said.overLead}>
              <CorrectionForm action={endIncident.bind(null, target)} send={said.overSend} workplace={workplace}><DayField name={`${SAYING}untilDay`} today={workplace.today} /></CorrectionForm>
            </Section>
          )}
          <Section heading={said.mend} lead={said.mendLead}>
            <EntryForm action={mendIncident.bind(null, target)} fields={said.fields} more={{ reason: said.fields.reason }} send={said.mendSend} today={workplace.today} zone={workplace.zone} people={[]} day={was.observedOn} isCorrection>
              <IncidentFields was={was} />
              <TextField name="reason" hint={said.hints.reason} />
            </EntryForm>
          </Section>
          <Section heading={said.withdraw} lead={said.withdrawLead}>
            <CorrectionForm action={withdrawIncident.bind(null, target)} send={said.withdrawSend} look="grave" workplace={workplace}><TextField name="reason" /></CorrectionForm>
          </Section>
        </>
      )}
    </>
  );
}
