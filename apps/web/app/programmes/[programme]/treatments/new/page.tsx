import { Batch, BatchInList, Place } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { TreatmentFields } from '../../../../../features/treatment/treatment-fields.tsx';
import { type Treated, writeTreatment } from '../../../../../features/treatment/write-treatment.action.ts';
import { peopleOf, placesOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { placeChoices } from '../../../../../lib/place-path.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { workdayChoices } from '../../../../../lib/workday-choices.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { Caution } from '../../../../../ui/caution.tsx';
import { Narrow } from '../../../../../ui/narrow.tsx';
import type { Choice } from '../../../../../ui/form/choice-field.tsx';
import { EntryForm } from '../../../../../ui/ledger/entry-form.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

interface NewTreatmentPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ placeId?: string; batchId?: string }>;
}

interface Subject {
  readonly name: string;
  readonly treated: Treated;
  /** Its own page. */
  readonly back: string;
  readonly batches: readonly Choice[];
}

export const generateMetadata = titled(({ treatments }) => treatments.addTitle);

/** First what was treated: a batch, or a place with what stands in it; then what was done. */
export default async function NewTreatmentPage({ params, searchParams }: NewTreatmentPageProps) {
  const [{ programme }, { placeId, batchId }] = await Promise.all([params, searchParams]);
  const [subject, workplace, people, { treatments: said }, t] = await Promise.all([
    subjectOf(programme, placeId, batchId), workplaceOf(programme), peopleOf(programme), getMessages(), getTranslations('treatments'),
  ]);
  const { today, zone, me } = workplace;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'treatments'), words: said.title }, ...(subject ? [{ href: subject.back, words: subject.name }] : [])]} />
      <PageHeading lead={said.addLead}>{subject ? t('addTitleOf', { name: subject.name }) : said.addTitle}</PageHeading>
      {!subject && <Narrow name="placeId" label={said.filters.placeId} all={said.choosePlace} show={said.goOn} chosen={undefined} choices={placeChoices(await placesOf(programme)).map(({ value, words }) => ({ id: value, name: words }))} />}
      {subject && (
        <div className="grid gap-6">
          <Caution>{said.caution}</Caution>
          <EntryForm
            action={writeTreatment.bind(null, programme, subject.treated, subject.back)} fields={said.fields} send={said.send} today={today} zone={zone}
            people={people.filter((person) => person.id !== me.personId)} workdays={await workdayChoices(programme, today)}
          >
            <TreatmentFields name={subject.name} batches={subject.batches} />
          </EntryForm>
        </div>
      )}
    </>
  );
}

async function subjectOf(programme: string, placeId: string | undefined, batchId: string | undefined): Promise<Subject | undefined> {
  if (batchId) {
    const { label, labels } = await read(apiOf(programme, 'batches', batchId), Batch);
    return { name: label ?? labels[0] ?? `…${batchId.slice(-6)}`, treated: { batchId }, back: `${pageOf(programme, 'batches', batchId)}#history`, batches: [] };
  }
  if (!placeId) return undefined;
  const asked = new URLSearchParams({ placeId, state: 'alive', limit: '200' });
  const [{ name }, batches] = await Promise.all([read(apiOf(programme, 'places', placeId), Place), read(`${apiOf(programme, 'batches')}?${asked}`, z.array(BatchInList))]);
  const choices = batches.map(({ id, label, place, rows }) => ({ value: id, words: [label ?? `…${id.slice(-6)}`, place?.name, rows].filter(Boolean).join(', ') }));
  return { name, treated: { placeId }, back: `${pageOf(programme, 'treatments')}?what=all&placeId=${placeId}`, batches: choices };
}
