import { DueItem } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { z } from 'zod';
import { DueFilter } from '../../../../features/due/due-filter.tsx';
import { DueTable } from '../../../../features/due/due-table.tsx';
import { dayAfter } from '../../../../lib/calendar.ts';
import { placesOf } from '../../../../lib/lists.ts';
import { readPart } from '../../../../lib/pages.ts';
import { pathTo, placeChoices } from '../../../../lib/place-path.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Empty } from '../../../../ui/empty.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';

interface DuePageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ kind?: string; placeId?: string; until?: string; after?: string; done?: string }>;
}

export const generateMetadata = titled(({ due }) => due.title);

/** As many as one screen of a desk holds. */
const A_PART = '60';

export default async function DuePage({ params, searchParams }: DuePageProps) {
  const { programme } = await params;
  const { kind, placeId, after, done, ...asked } = await searchParams;
  const [{ isDesk, today }, places, { due: said }] = await Promise.all([workplaceOf(programme), placesOf(programme), getMessages()]);
  const until = asked.until || dayAfter(today, 7);
  const kept = { ...(kind ? { kind } : {}), ...(placeId ? { placeId } : {}), until };
  const { items, after: next } = await readPart(`${apiOf(programme, 'due')}?${new URLSearchParams({ ...kept, limit: A_PART, ...(after ? { after } : {}) })}`, z.array(DueItem));
  return (
    <>
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      {done && <p role="status" className="mb-4 font-semibold">✓ {said.putOffDone}</p>}
      <DueFilter today={today} chosen={{ kind, placeId, until }} places={placeChoices(places, ({ kind: of }) => of !== 'tray' && of !== 'plot')} />
      {items.length === 0 ? <Empty>{kind || placeId ? said.emptyAt : said.empty}</Empty> : <DueTable programme={programme} today={today} items={items} isDesk={isDesk} liesIn={(id) => pathTo(places, id).slice(0, -1).map(({ name }) => name).join(' › ')} />}
      {items.some((item) => item.kind === 'verdict') && <p className="mt-4 max-w-prose text-sm text-ink-soft">{said.calling}</p>}
      {next && <div className="mt-6"><ButtonLink look="quiet" href={`?${new URLSearchParams({ ...kept, after: next })}`}>{said.more}</ButtonLink></div>}
    </>
  );
}
