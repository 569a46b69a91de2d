import type { Climate } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay, sayMoment } from '../../lib/calendar.ts';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';
import { Table } from '../../ui/table.tsx';

type Day = Climate['days'][number];

/** What the charts show, in numbers. */
export function DailyTable({ days }: { days: readonly Day[] }) {
  const { columns, dailyTitle } = useMessages().climate;
  const number = (head: string, cell: (day: Day) => number | undefined) => ({ head, isNumber: true, cell });
  return (
    <Section heading={dailyTitle}>
      <Table
        caption={dailyTitle}
        isCaptionHidden
        rows={days}
        keyOf={({ day }) => day}
        columns={[
          { head: columns.day, cell: ({ day }) => sayDay(day) },
          number(columns.readings, ({ readings }) => readings),
          number(columns.lowestC, ({ temperatureC }) => temperatureC?.lowest),
          number(columns.meanC, ({ temperatureC }) => temperatureC?.mean),
          number(columns.highestC, ({ temperatureC }) => temperatureC?.highest),
          number(columns.lowestH, ({ humidityPercent }) => humidityPercent?.lowest),
          number(columns.meanH, ({ humidityPercent }) => humidityPercent?.mean),
          number(columns.highestH, ({ humidityPercent }) => humidityPercent?.highest),
        ]}
      />
    </Section>
  );
}

/** The last readings one by one; the desk may set a wrong one aside. */
export function LatestTable({ latest, zone, setAsideAt }: { latest: Climate['latest']; zone: string; setAsideAt: ((id: string) => string) | undefined }) {
  const said = useMessages().climate;
  const t = useTranslations('climate');
  const { columns } = said;
  return (
    <Section heading={said.latestTitle}>
      <Table
        caption={said.latestTitle}
        isCaptionHidden
        rows={latest}
        keyOf={({ id }) => id}
        columns={[
          { head: columns.when, cell: ({ takenAt }) => sayMoment(takenAt, zone) },
          { head: columns.c, isNumber: true, cell: ({ temperatureC }) => temperatureC },
          { head: columns.h, isNumber: true, cell: ({ humidityPercent }) => humidityPercent },
          { head: columns.by, cell: ({ toldBy }) => toldBy },
          { head: columns.state, cell: ({ id, setAside }) => (setAside ? t('isSetAside', { reason: setAside }) : <>{said.counted} {setAsideAt && <span className="not-on-paper"><RowLink href={setAsideAt(id)}>{said.setAside}</RowLink></span>}</>) },
        ]}
      />
    </Section>
  );
}
