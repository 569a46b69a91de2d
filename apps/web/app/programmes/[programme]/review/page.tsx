import { ReviewCode, ReviewGroup, ReviewItem } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { AcceptMany } from '../../../../features/review/accept-many.tsx';
import { GroupLinks } from '../../../../features/review/group-links.tsx';
import { itemKey } from '../../../../features/review/item-key.ts';
import { ReviewCard } from '../../../../features/review/review-card.tsx';
import { peopleOf, placesOf } from '../../../../lib/lists.ts';
import { read } from '../../../../lib/read.ts';
import { readPart } from '../../../../lib/pages.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Empty } from '../../../../ui/empty.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';

interface ReviewPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ mine?: string; code?: string; after?: string; decide?: string; decided?: string }>;
}

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations('review'))('title') };
}

export default async function ReviewPage({ params, searchParams }: ReviewPageProps) {
  const { programme } = await params;
  const { mine, after, decide, decided, ...asked } = await searchParams;
  const code = ReviewCode.safeParse(asked.code).data;
  const { me, zone } = await workplaceOf(programme);
  const narrowed = { ...(code ? { code } : {}), ...(after ? { after } : {}) };
  const kept = new URLSearchParams({ ...(mine ? { mine } : {}), ...narrowed }).toString();
  const query = new URLSearchParams({ ...(mine ? { assignedTo: me.personId } : {}), ...narrowed });
  const [{ items, after: next }, groups, people, places, { review: said }, t] = await Promise.all([
    readPart(`${apiOf(programme, 'review')}?${query}`, z.array(ReviewItem)), read(apiOf(programme, 'review', 'groups'), z.array(ReviewGroup)), peopleOf(programme), placesOf(programme), getMessages(), getTranslations('review'),
  ]);
  const names = new Map(places.map(({ id, name }) => [id, name]));
  // What was only told has to be written before it is done with, and looked for where it may stand twice: one after the other.
  const flagged = items.filter((item) => item.code !== 'not-booked' && item.code !== 'told-after-all');
  return (
    <>
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      {decided && <p role="status" className="mb-4 font-semibold">✓ {t('decidedN', { n: Number(decided) || 1 })}</p>}
      {groups.length > 0 && <GroupLinks groups={groups} code={code} mine={mine !== undefined} />}
      {code && <p className="mb-4 max-w-prose">{said.todo[code]}</p>}
      {flagged.length > 1 && !decide && <AcceptMany programme={programme} kept={kept} isMixed={code === undefined} items={flagged} nameOf={(id) => names.get(id)} />}
      {items.length === 0 && <Empty>{groups.length === 0 ? said.empty : mine ? said.emptyMine : said.emptyKind}</Empty>}
      <ul className="grid gap-4">
        {items.map((item) => (
          <li key={itemKey(item)}>
            <ReviewCard programme={programme} kept={kept} item={item} zone={zone} isOpen={decide === itemKey(item)} people={people} nameOf={(id) => names.get(id)} />
          </li>
        ))}
      </ul>
      {next && <div className="mt-6"><ButtonLink look="quiet" href={`?${new URLSearchParams({ ...(mine ? { mine } : {}), ...narrowed, after: next })}`}>{said.more}</ButtonLink></div>}
    </>
  );
}
