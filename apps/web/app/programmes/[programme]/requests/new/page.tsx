import { getMessages } from 'next-intl/server';
import { addRequest } from '../../../../../features/request/add-request.action.ts';
import { requestChoices } from '../../../../../features/request/request-choices.ts';
import { RequestFields } from '../../../../../features/request/request-fields.tsx';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { FormPage } from '../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ requests }) => requests.addTitle);

export default async function NewRequestPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ requests: said }, choices] = await Promise.all([getMessages(), requestChoices(programme)]);
  return (
    <FormPage trail={[{ href: pageOf(programme, 'requests'), words: said.title }]} title={said.addTitle} action={addRequest.bind(null, programme)} labels={said.fields} send={said.save} newId={newId()}>
      <RequestFields {...choices} />
    </FormPage>
  );
}
