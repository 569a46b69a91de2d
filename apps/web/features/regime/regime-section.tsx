import type { Regimes } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { useRegimeWords } from '../../ui/regime-words.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';
import { Table } from '../../ui/table.tsx';

interface RegimeSectionProps {
  readonly programme: string;
  readonly placeId: string;
  readonly regimes: Regimes;
  readonly isDesk: boolean;
}

/** How a place is kept now, its own regime or that of the place around it; and what was told for it before. */
export function RegimeSection({ programme, placeId, regimes: { now, own }, isDesk }: RegimeSectionProps) {
  const said = useMessages().regimes;
  const t = useTranslations('regimes');
  const words = useRegimeWords();
  const days = ({ fromDay, untilDay }: { fromDay: string; untilDay: string | null }) =>
    untilDay === null ? t('since', { from: sayDay(fromDay) }) : t('days', { from: sayDay(fromDay), until: sayDay(untilDay) });
  return (
    <Section heading={said.title} lead={said.lead}>
      <p className="max-w-prose text-lg font-semibold">{now ? words(now) : said.none}</p>
      {now && now.placeId !== placeId && <p className="text-ink-soft">{t('asAround', { place: now.placeName })}, {days(now)}</p>}
      {own.length > 0 && (
        <div className="mt-4">
          <Table
            caption={said.title}
            isCaptionHidden
            rows={own}
            keyOf={({ id }) => id}
            columns={[
              { head: said.columns.days, cell: (regime) => <>{days(regime)}{regime.id === now?.id && <span className="text-ink-soft"> ({said.now})</span>}</> },
              { head: said.columns.says, cell: words },
              { head: said.columns.note, cell: ({ note }) => note },
              ...(isDesk ? [{ head: <span className="not-on-paper">{said.mend}</span>, cell: ({ id }: { id: string }) => <span className="not-on-paper"><RowLink href={pageOf(programme, 'places', placeId, 'regimes', id)}>{said.mend}</RowLink></span> }] : []),
            ]}
          />
        </div>
      )}
      {isDesk && <p className="not-on-paper mt-4"><ButtonLink look="quiet" href={pageOf(programme, 'places', placeId, 'regimes', 'new')}>{said.add}</ButtonLink></p>}
    </Section>
  );
}
