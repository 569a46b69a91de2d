import { ReviewItem } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { pageOf } from '../../lib/page-address.ts';
import { readPart } from '../../lib/pages.ts';
import { apiOf } from '../../lib/workplace.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { Section } from '../../ui/section.tsx';

/** Beyond it the number says no more than "many". */
const MOST = 100;

/** How much waits for a coordinator's decision. */
export async function ReviewCount({ programme }: { programme: string }) {
  const [{ items, after }, { home: said }, t] = await Promise.all([
    readPart(`${apiOf(programme, 'review')}?limit=${MOST}`, z.array(ReviewItem)), getMessages(), getTranslations('home'),
  ]);
  return (
    <Section heading={said.review}>
      <p>{after === undefined ? t('reviewCount', { n: items.length }) : t('reviewMany', { n: items.length })}</p>
      {items.length > 0 && <div className="mt-3"><ButtonLink look="quiet" href={pageOf(programme, 'review')}>{said.toReview}</ButtonLink></div>}
    </Section>
  );
}
