import { RequestInList } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { RequestState } from '../../../../features/request/request-state.tsx';
import { whoAsks } from '../../../../features/request/who-asks.ts';
import { sayDay } from '../../../../lib/calendar.ts';
import { partnersOf, taxaOf, taxonName } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { readPart } from '../../../../lib/pages.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Flag } from '../../../../ui/flag.tsx';
import { ListPage } from '../../../../ui/list-page.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';

interface RequestsPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ after?: string; open?: string }>;
}

export const generateMetadata = titled(({ requests }) => requests.title);

export default async function RequestsPage({ params, searchParams }: RequestsPageProps) {
  const { programme } = await params;
  const asked = await searchParams;
  const open = asked.open === 'no' ? 'no' : 'yes';
  const query = new URLSearchParams({ open, ...(asked.after && { after: asked.after }) });
  const [{ isDesk }, { items: requests, after: next }, partners, taxa, { requests: said, words }, t] = await Promise.all([
    workplaceOf(programme), readPart(`${apiOf(programme, 'requests')}?${query}`, z.array(RequestInList)), partnersOf(programme), taxaOf(programme), getMessages(), getTranslations('requests'),
  ]);
  return (
    <ListPage
      title={said.title}
      lead={said.lead}
      empty={said.empty}
      add={isDesk ? { href: pageOf(programme, 'requests', 'new'), words: said.add } : undefined}
      rows={requests}
      keyOf={({ id }) => id}
      columns={[
        { head: said.who, cell: (request) => <RowLink href={pageOf(programme, 'requests', request.id)}>{whoAsks(request, partners)}</RowLink> },
        { head: said.what, cell: ({ plants, taxonId, stage }) => t('whatLine', { n: plants, species: taxonName(taxa, taxonId), stage: words.stage[stage] }) },
        { head: said.fields.wantedOn, cell: ({ wantedOn }) => wantedOn && sayDay(wantedOn) },
        { head: said.state, cell: ({ state }) => <RequestState state={state} /> },
        {
          head: said.reserved,
          cell: ({ state, covered, reserved, plants, gone }) =>
            state === 'gone' ? t('went', { n: gone }) : <>{t('reservedOf', { n: covered, asked: plants })} {covered < reserved && <Flag tone="grave">{t('shortBy', { n: reserved - covered })}</Flag>}</>,
        },
      ]}
    >
      <div className="mt-6 flex flex-wrap gap-3">
        <ButtonLink look="quiet" href={open === 'yes' ? '?open=no' : '?open=yes'}>{open === 'yes' ? said.closedOnes : said.openOnes}</ButtonLink>
        {next && <ButtonLink look="quiet" href={`?${new URLSearchParams({ open, after: next })}`}>{said.more}</ButtonLink>}
      </div>
    </ListPage>
  );
}
