import { News, type NewsDay } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { getMessages, getTranslations } from 'next-intl/server';
import { sayDay, sayMoment } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';
import { seenNews } from './seen-news.action.ts';

/** What arrived since the person last said that they have seen it. */
export async function WhatChanged({ programme, zone }: { programme: string; zone: string }) {
  const [news, { home: said }, t] = await Promise.all([read(apiOf(programme, 'news'), News), getMessages(), getTranslations('home')]);
  const lead = news.seenUntil === null ? said.changedFortnight : t('changedSince', { moment: sayMoment(news.seenUntil, zone) });
  return (
    <Section heading={said.changed} lead={lead}>
      {news.days.length === 0 ? (
        <p className="text-ink-soft">{said.nothingChanged}</p>
      ) : (
        <>
          <ul className="grid gap-2">
            {news.days.map((day) => (
              <li key={day.day}>
                <DayOfNews programme={programme} day={day} />
              </li>
            ))}
          </ul>
          {news.moreDays > 0 && <p className="mt-2 text-sm text-ink-soft">{t('moreDays', { n: news.moreDays })}</p>}
          <div className="not-on-paper mt-4"><ActionForm action={seenNews.bind(null, programme, news.asOf)} send={said.seenIt} look="quiet" /></div>
        </>
      )}
    </Section>
  );
}

function DayOfNews({ programme, day: { day, entries, kinds, trips, sheets } }: { programme: string; day: NewsDay }) {
  const t = useTranslations('home');
  const words: Readonly<Record<string, string>> = useMessages().entries.kinds;
  const [shown, rest] = [kinds.slice(0, 4), kinds.slice(4).reduce((sum, { n }) => sum + n, 0)];
  return (
    <>
      <RowLink href={`${pageOf(programme, 'news')}?day=${day}`}>{`${sayDay(day)}: ${t('entries', { n: entries })}`}</RowLink>
      <span className="block text-sm text-ink-soft">
        {[...shown.map(({ kind, n }) => `${n} × ${words[kind] ?? kind}`), rest > 0 && t('otherEntries', { n: rest }), trips > 0 && t('newTrips', { n: trips }), sheets > 0 && t('newSheets', { n: sheets })].filter(Boolean).join(', ')}
      </span>
    </>
  );
}
