import type { Place } from '@sprigline/contract';
import { NextIntlClientProvider, useMessages, useTranslations } from 'next-intl';
import type { Route } from 'next';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import type { TrayNow } from '../../lib/tray-now.ts';
import { WHOLE_PICTURE } from '../../lib/tray-rows.ts';
import { apiOf } from '../../lib/workplace.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { Section } from '../../ui/section.tsx';
import { TrayPicture } from '../../ui/tray-picture.tsx';
import { Way } from '../../ui/way.tsx';
import { FrameForm } from './frame-form.tsx';

/** A tray from above: its newest portrait under its rows, and in words what was stuck into each. */
export function RowMapSection({ programme, place, tray: { rows, elsewhere, portrait } }: { programme: string; place: Place; tray: TrayNow }) {
  const { ui, places: { rowMap: said } } = useMessages();
  const t = useTranslations('places.rowMap');
  const picture = portrait && { src: apiOf(programme, 'photos', portrait.id, 'large'), width: portrait.width, height: portrait.height, frame: portrait.frame };
  return (
    <Section heading={said.title} lead={portrait ? t('portrait', { day: sayDay(portrait.takenOn), name: portrait.takenBy }) : said.noPortrait}>
      <div className="grid items-start gap-6 md:grid-cols-2">
        <TrayPicture rows={rows} portrait={picture} />
        <ol className="grid gap-1">
          {rows.map(({ row, batches }) => (
            <li key={row} className="flex flex-wrap items-center gap-x-3 border-b border-line py-1">
              <strong className="min-w-16">{t('row', { row })}</strong>
              {batches.length === 0 && <span className="text-ink-soft">{said.empty}</span>}
              {batches.map(({ id, label, donorTree, rows: where, balance }) => (
                <span key={id} className="inline-flex flex-wrap items-center gap-x-2">
                  <Way href={pageOf(programme, 'batches', id) as Route} className="tie-label">{label ?? `…${id.slice(-6)}`}</Way>
                  <span className="text-sm text-ink-soft">{[donorTree?.label, t(where?.includes('-') ? 'leftInRows' : 'left', { n: balance, rows: where ?? '' })].filter(Boolean).join(', ')}</span>
                </span>
              ))}
            </li>
          ))}
        </ol>
      </div>
      {elsewhere.length > 0 && <p className="mt-3 text-sm text-ink-soft">{t('elsewhere', { labels: elsewhere.map(({ label, id }) => label ?? `…${id.slice(-6)}`).join(', ') })}</p>}
      <p className="not-on-paper mt-4 flex flex-wrap gap-3">
        <ButtonLink look="quiet" href={`${pageOf(programme, 'places', place.id)}?portrait=new#pictures`}>{said.take}</ButtonLink>
        <ButtonLink look="quiet" href={`${pageOf(programme, 'without-label')}?placeId=${place.id}`}>{said.lost}</ButtonLink>
      </p>
      {portrait && picture && (
        <details className="not-on-paper mt-4" open={portrait.frame === null}>
          <summary className="inline-flex min-h-14 cursor-pointer items-center font-semibold underline">{said.mend}</summary>
          <NextIntlClientProvider messages={{ ui, places: { rowMap: said } }}>
            <FrameForm programme={programme} placeId={place.id} photoId={portrait.id} picture={{ ...picture, frame: portrait.frame ?? WHOLE_PICTURE }} rows={rows.length} />
          </NextIntlClientProvider>
        </details>
      )}
    </Section>
  );
}
