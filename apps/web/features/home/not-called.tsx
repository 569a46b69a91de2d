import { DueItem } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { readPart } from '../../lib/pages.ts';
import { apiOf } from '../../lib/workplace.ts';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';
import { Tag } from '../../ui/tag.tsx';

const AT_A_GLANCE = 4;

/** Trays that are past the day of their verdict and not called. */
export async function NotCalled({ programme, today }: { programme: string; today: string }) {
  const query = { kind: 'verdict', limit: String(AT_A_GLANCE) };
  const [{ items, after }, { home: said }, t] = await Promise.all([readPart(`${apiOf(programme, 'due')}?${new URLSearchParams(query)}`, z.array(DueItem)), getMessages(), getTranslations('home')]);
  return (
    <Section heading={said.notCalled}>
      {items.length === 0 && <p className="text-ink-soft">{said.allCalled}</p>}
      <ul className="grid gap-2">
        {items.map(({ key, batch, dueOn, plants, place }) => (
          <li key={key} className="flex flex-wrap items-center gap-x-3">
            {batch && <Tag href={pageOf(programme, 'batches', batch.id)}>{batch.label ?? `…${batch.id.slice(-6)}`}</Tag>}
            <span className="text-sm">{t('verdictWas', { day: sayDay(dueOn), n: plants, place: place.name })}</span>
          </li>
        ))}
      </ul>
      {after && <p className="mt-2"><RowLink href={`${pageOf(programme, 'due')}?${new URLSearchParams({ kind: 'verdict', until: today })}`}>{said.allNotCalled}</RowLink></p>}
    </Section>
  );
}
