import { PlantRequest } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { changeRequest } from '../../../../../../features/request/change-request.action.ts';
import { requestChoices } from '../../../../../../features/request/request-choices.ts';
import { RequestFields } from '../../../../../../features/request/request-fields.tsx';
import { whoAsks } from '../../../../../../features/request/who-asks.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { readVersion } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf } from '../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ requests }) => requests.change);

export default async function ChangeRequestPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [{ body: request, etag }, { requests: said }, t, choices] = await Promise.all([
    readVersion(apiOf(programme, 'requests', id), PlantRequest), getMessages(), getTranslations('requests'), requestChoices(programme),
  ]);
  const name = whoAsks(request, choices.partners);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'requests'), words: said.title }, { href: pageOf(programme, 'requests', id), words: name }]}
      title={t('changeTitle', { name })}
      action={changeRequest.bind(null, programme, id, etag)}
      labels={said.fields}
      send={said.save}
    >
      <RequestFields request={request} {...choices} />
    </FormPage>
  );
}
