import { PlantRequest, RequestPlants } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { requestChoices } from '../../../../../features/request/request-choices.ts';
import { RequestFacts } from '../../../../../features/request/request-facts.tsx';
import { SetAsideTable } from '../../../../../features/request/set-aside-table.tsx';
import { StateButtons } from '../../../../../features/request/state-buttons.tsx';
import { whoAsks } from '../../../../../features/request/who-asks.ts';
import { partnersOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read, readVersion } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../ui/section.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ requests }) => requests.kind);

export default async function RequestPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [{ body: request, etag }, { supplies }, choices, partners, { isDesk }, { requests: said }] = await Promise.all([
    readVersion(apiOf(programme, 'requests', id), PlantRequest), read(apiOf(programme, 'requests', id, 'plants'), RequestPlants), requestChoices(programme), partnersOf(programme), workplaceOf(programme), getMessages(),
  ]);
  const way = (part: string) => pageOf(programme, 'requests', id, part);
  const isOpen = request.state !== 'gone' && request.state !== 'withdrawn';
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'requests'), words: said.title }]} />
      <PageHeading kind={said.kind} act={isDesk && request.state !== 'gone' && <ButtonLink look="quiet" href={way('edit')}>{said.change}</ButtonLink>}>
        {whoAsks(request, partners)}
      </PageHeading>
      <RequestFacts programme={programme} request={request} {...choices} partners={partners} />
      <div className="mt-10">
        <Section heading={said.plants}>
          {request.state === 'gone' && <ButtonLink href={way('note')}>{said.seeNote}</ButtonLink>}
          {isOpen && <SetAsideTable programme={programme} request={request} supplies={supplies} />}
          {isOpen && (
            <div className="not-on-paper mt-6 flex flex-wrap gap-3">
              {isDesk && <ButtonLink look={request.setAside.length === 0 ? 'main' : 'quiet'} href={way('set-aside')}>{said.setAside}</ButtonLink>}
              <ButtonLink look="quiet" href={way('pick')}>{said.pick}</ButtonLink>
              {isDesk && request.setAside.length > 0 && <ButtonLink href={way('despatch')}>{said.despatch}</ButtonLink>}
            </div>
          )}
        </Section>
      </div>
      {isDesk && request.state !== 'gone' && (
        <Section heading={said.state} lead={said.stateLead}><StateButtons programme={programme} request={request} etag={etag} /></Section>
      )}
    </>
  );
}
