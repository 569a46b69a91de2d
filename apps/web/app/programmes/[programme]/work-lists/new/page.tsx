import { getMessages } from 'next-intl/server';
import { ListFormFields } from '../../../../../features/work-list/list-form-fields.tsx';
import { makeList } from '../../../../../features/work-list/make-list.action.ts';
import { placesOf, standsOf, taxaOf } from '../../../../../lib/lists.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { FormPage } from '../../../../../ui/form/form-page.tsx';

interface NewWorkListPageProps {
  readonly params: Promise<{ programme: string }>;
  /** Where what is due leads here, it says what and where. */
  readonly searchParams: Promise<{ kind?: string; placeId?: string }>;
}

export const generateMetadata = titled(({ workLists }) => workLists.makeTitle);

export default async function NewWorkListPage({ params, searchParams }: NewWorkListPageProps) {
  const [{ programme }, { kind, placeId }] = await Promise.all([params, searchParams]);
  const [{ workLists: said }, places, stands, taxa] = await Promise.all([getMessages(), placesOf(programme), standsOf(programme), taxaOf(programme)]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'work-lists'), words: said.title }]}
      title={said.makeTitle}
      lead={said.makeLead}
      action={makeList.bind(null, programme)}
      labels={said.fields}
      send={said.send}
      newId={newId()}
    >
      <ListFormFields places={places} stands={stands} taxa={taxa} kind={kind} placeId={placeId} />
    </FormPage>
  );
}
