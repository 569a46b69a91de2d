import { ReviewItem } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { itemKey } from '../../../../features/review/item-key.ts';
import { ReviewCard } from '../../../../features/review/review-card.tsx';
import { peopleOf, placesOf } from '../../../../lib/lists.ts';
import { readPart } from '../../../../lib/pages.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Empty } from '../../../../ui/empty.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';

interface ReviewPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ mine?: string; after?: string; decide?: string; decided?: string }>;
}

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations('review'))('title') };
}

export default async function ReviewPage({ params, searchParams }: ReviewPageProps) {
  const { programme } = await params;
  const { mine, after, decide, decided } = await searchParams;
  const { me, zone } = await workplaceOf(programme);
  const kept = new URLSearchParams({ ...(mine ? { mine } : {}) });
  const query = new URLSearchParams({ ...(mine ? { assignedTo: me.personId } : {}), ...(after ? { after } : {}) });
  const [{ items, after: next }, people, places, { review: said }] = await Promise.all([
    readPart(`${apiOf(programme, 'review')}?${query}`, z.array(ReviewItem)), peopleOf(programme), placesOf(programme), getMessages(),
  ]);
  const names = new Map(places.map(({ id, name }) => [id, name]));
  return (
    <>
      <PageHeading lead={said.lead} act={<ButtonLink look="quiet" href={mine ? '?' : '?mine=1'}>{mine ? said.all : said.mine}</ButtonLink>}>
        {said.title}
      </PageHeading>
      {decided && <p role="status" className="mb-4 font-semibold">✓ {said.decided}</p>}
      {items.length === 0 && <Empty>{mine ? said.emptyMine : said.empty}</Empty>}
      <ul className="grid gap-4">
        {items.map((item) => (
          <li key={itemKey(item)}>
            <ReviewCard programme={programme} item={item} zone={zone} isOpen={decide === itemKey(item)} people={people} nameOf={(id) => names.get(id)} />
          </li>
        ))}
      </ul>
      {next && <div className="mt-6"><ButtonLink look="quiet" href={`?${new URLSearchParams([...kept, ['after', next]])}`}>{said.more}</ButtonLink></div>}
    </>
  );
}
