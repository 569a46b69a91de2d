import type { TimeAxis } from '@sprigline/contract';
import { useFormatter, useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Table } from '../../ui/table.tsx';

/** Table twin of the time axis, the latest first. */
export function TimeTable({ points }: { points: TimeAxis['points'] }) {
  const { dashboards: { time: said } } = useMessages();
  const stage = useTranslations('words.stage');
  const { number } = useFormatter();
  return (
    <Table
      caption={said.title}
      isCaptionHidden
      rows={points.toReversed()}
      keyOf={({ day }) => day}
      columns={[
        { head: said.day, cell: ({ day }) => sayDay(day) },
        ...(['cutting', 'liner', 'potted', 'planted'] as const).map((of) => ({ head: stage(of), isNumber: true, cell: (point: TimeAxis['points'][number]) => number(point[of]) })),
        { head: said.looked, isNumber: true, cell: ({ looked }) => number(looked) },
      ]}
    />
  );
}
