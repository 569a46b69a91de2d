import { NewsEntry } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { NewsTable } from '../../../../features/news/news-table.tsx';
import { sayDay } from '../../../../lib/calendar.ts';
import { placesOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { readPart } from '../../../../lib/pages.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Empty } from '../../../../ui/empty.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';
import { Trail } from '../../../../ui/trail.tsx';

interface NewsPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ day?: string; after?: string }>;
}

export const generateMetadata = titled(({ news }) => news.kind);

export default async function NewsPage({ params, searchParams }: NewsPageProps) {
  const { programme } = await params;
  const { zone, today } = await workplaceOf(programme);
  const { day = today, after } = await searchParams;
  const query = new URLSearchParams({ day, ...(after ? { after } : {}) });
  const [{ items, after: next }, places, { news: said, shell }, t] = await Promise.all([
    readPart(`${apiOf(programme, 'news', 'entries')}?${query}`, z.array(NewsEntry)), placesOf(programme), getMessages(), getTranslations('news'),
  ]);
  const names = new Map(places.map(({ id, name }) => [id, name]));
  return (
    <>
      <Trail steps={[{ href: pageOf(programme), words: shell.items.home }]} />
      <PageHeading kind={said.kind} lead={said.lead}>{t('title', { day: sayDay(day) })}</PageHeading>
      {items.length === 0 ? <Empty>{said.empty}</Empty> : <NewsTable programme={programme} zone={zone} entries={items} nameOf={(id) => names.get(id)} />}
      {next && <div className="mt-6"><ButtonLink look="quiet" href={`?${new URLSearchParams({ day, after: next })}`}>{said.more}</ButtonLink></div>}
    </>
  );
}
