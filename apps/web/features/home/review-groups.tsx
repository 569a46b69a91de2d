import { ReviewGroup } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { pageOf } from '../../lib/page-address.ts';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';

const AT_A_GLANCE = 4;

/** What waits for a coordinator's decision, by kind; what is assigned to oneself first. */
export async function ReviewGroups({ programme }: { programme: string }) {
  const [groups, { home: said, entries }, t] = await Promise.all([read(apiOf(programme, 'review', 'groups'), z.array(ReviewGroup)), getMessages(), getTranslations('home')]);
  const sum = (of: 'n' | 'mine') => groups.reduce((all, group) => all + group[of], 0);
  const open = sum('n');
  const mine = sum('mine');
  return (
    <Section heading={said.review}>
      <p>{t('reviewCount', { n: open })}</p>
      {mine > 0 && <p><RowLink href={`${pageOf(programme, 'review')}?mine=1`}>{t('reviewMine', { n: mine })}</RowLink></p>}
      <ul className="mt-2 grid gap-1">
        {groups.slice(0, AT_A_GLANCE).map(({ code, n }) => (
          <li key={code}><RowLink href={`${pageOf(programme, 'review')}?code=${code}`}>{t('reviewKind', { n, what: entries.flagShort[code] })}</RowLink></li>
        ))}
      </ul>
      {open > 0 && <div className="mt-3"><ButtonLink look="quiet" href={pageOf(programme, 'review')}>{said.toReview}</ButtonLink></div>}
    </Section>
  );
}
