import { TripNote } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { saveNote } from '../../../../../../features/trip/save-note.action.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { readIfAllowed } from '../../../../../../lib/read-if-allowed.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf } from '../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';
import { ProseField } from '../../../../../../ui/form/prose-field.tsx';

export const generateMetadata = titled(({ trips }) => trips.note);

export default async function TripNotePage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [note, { trips: said }] = await Promise.all([readIfAllowed(apiOf(programme, 'trips', id, 'note'), TripNote), getMessages()]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'trips'), words: said.title }, { href: pageOf(programme, 'trips', id), words: said.kind }]}
      title={said.note}
      lead={said.noteLead}
      action={saveNote.bind(null, programme, id, note?.etag ?? '')}
      labels={said.fields}
      send={said.save}
    >
      <ProseField name="note" value={note?.body.note} rows={8} />
    </FormPage>
  );
}
