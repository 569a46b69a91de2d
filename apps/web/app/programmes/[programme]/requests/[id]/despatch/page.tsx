import { PlantRequest, RequestPlants } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { redirect } from 'next/navigation';
import { despatchRequest } from '../../../../../../features/request/despatch.action.ts';
import { DespatchFields } from '../../../../../../features/request/despatch-fields.tsx';
import { supplyLabels } from '../../../../../../features/request/supply-fields.tsx';
import { whoAsks } from '../../../../../../features/request/who-asks.ts';
import { freeLabels } from '../../../../../../lib/free-labels.ts';
import { partnersOf, placesOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { pathTo, placeChoices } from '../../../../../../lib/place-path.ts';
import { read } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { workdayChoices } from '../../../../../../lib/workday-choices.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../../ui/button-link.tsx';
import { Caution } from '../../../../../../ui/caution.tsx';
import { Empty } from '../../../../../../ui/empty.tsx';
import { ActionForm } from '../../../../../../ui/form/action-form.tsx';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ requests }) => requests.despatch);

export default async function DespatchPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [request, { supplies }, partners, places, { today }, { requests: said }, t] = await Promise.all([
    read(apiOf(programme, 'requests', id), PlantRequest), read(apiOf(programme, 'requests', id, 'plants'), RequestPlants), partnersOf(programme), placesOf(programme), workplaceOf(programme), getMessages(), getTranslations('requests'),
  ]);
  if (request.state === 'gone') redirect(pageOf(programme, 'requests', id, 'note'));
  const going = supplies.filter(({ covered }) => covered > 0);
  const [workdays, labels] = await Promise.all([workdayChoices(programme, today), freeLabels(programme, going.length)]);
  const name = whoAsks(request, partners);
  // What lies in a partner's place is theirs too.
  const theirs = placeChoices(places, (place) => pathTo(places, place.id).some(({ partnerId }) => partnerId === request.partnerId) && place.kind !== 'site' && place.kind !== 'plot');
  const needsPlace = request.partnerId !== null && request.placeId === null && theirs.length === 0;
  const labelsThere = Object.fromEntries(going.map(({ batchId, label }) => [`label/${batchId}`, t('labelThere', { label: label ?? said.untold })]));
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'requests'), words: said.title }, { href: pageOf(programme, 'requests', id), words: name }]} />
      <PageHeading lead={said.despatchLead}>{t('despatchTitle', { name })}</PageHeading>
      {going.length === 0 && <Empty act={<ButtonLink href={pageOf(programme, 'requests', id, 'set-aside')}>{said.setAside}</ButtonLink>}>{said.nothingToGo}</Empty>}
      {going.length > 0 && needsPlace && <Empty act={<ButtonLink href={pageOf(programme, 'places', 'new')}>{said.addPlace}</ButtonLink>}>{said.noPartnerPlace}</Empty>}
      {going.length > 0 && !needsPlace && (
        <div className="grid gap-6">
          <Caution>{said.caution}</Caution>
          <ActionForm
            action={despatchRequest.bind(null, programme, id)}
            labels={{ ...said.despatchFields, ...supplyLabels(going, (label) => t('lineField', { label }), said.untold), ...labelsThere }}
            send={request.placeId === null ? said.despatchSend : said.despatchSendPlanted}
          >
            <DespatchFields request={request} supplies={going} today={today} places={theirs} workdays={workdays} labels={labels} />
          </ActionForm>
        </div>
      )}
    </>
  );
}
