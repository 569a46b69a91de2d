import { PlantRequest, RequestPlants } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { PaperWays } from '../../../../../../features/request/paper-ways.tsx';
import { nothingToPick, pickLines } from '../../../../../../features/request/pick-lines.ts';
import { PickTable } from '../../../../../../features/request/pick-table.tsx';
import { whoAsks } from '../../../../../../features/request/who-asks.ts';
import { sayDay } from '../../../../../../lib/calendar.ts';
import { partnersOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../../ui/button-link.tsx';
import { Empty } from '../../../../../../ui/empty.tsx';
import { Flag } from '../../../../../../ui/flag.tsx';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ requests }) => requests.pick);

export default async function PickPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [request, { supplies }, partners, workplace, { requests: said }, t] = await Promise.all([
    read(apiOf(programme, 'requests', id), PlantRequest), read(apiOf(programme, 'requests', id, 'plants'), RequestPlants), partnersOf(programme), workplaceOf(programme), getMessages(), getTranslations('requests'),
  ]);
  const name = whoAsks(request, partners);
  const { lines, isProposed } = pickLines(supplies);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'requests'), words: said.title }, { href: pageOf(programme, 'requests', id), words: name }]} />
      <PageHeading lead={said.pickLead}>{t('pickTitle', { name })}</PageHeading>
      <p className="mb-4">{t('asOf', { day: sayDay(workplace.today), programme: workplace.name })} {isProposed && <Flag tone="look">{said.pickProposed}</Flag>}</p>
      {lines.length === 0 ? (
        <Empty act={request.state === 'gone' && <ButtonLink href={pageOf(programme, 'requests', id, 'note')}>{said.seeNote}</ButtonLink>}>{nothingToPick(request, said)}</Empty>
      ) : (
        <PickTable lines={lines} />
      )}
      {lines.length > 0 && <div className="mt-6"><PaperWays pdf={pageOf(programme, 'requests', id, 'pick', 'pdf')} /></div>}
    </>
  );
}
