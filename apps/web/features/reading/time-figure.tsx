import type { TimeAxis } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { useId } from 'react';
import { sayDay } from '../../lib/calendar.ts';
import { IncidentsTable } from './incidents-table.tsx';
import { More } from '../../ui/more.tsx';
import { TimeChart } from './time-chart.tsx';
import { TimeKey } from './time-key.tsx';
import { TimeTable } from './time-table.tsx';

/** Plants at each stage over time, with rounds and incidents marked; its table twins, and where it comes from. */
export function TimeFigure({ axis, csv }: { axis: TimeAxis; csv: string }) {
  const t = useTranslations('dashboards.time');
  const describedBy = useId();
  const [first, last] = [axis.points[0], axis.points.at(-1)];
  if (!first || !last) return <p className="text-ink-soft">{t('nothing')}</p>;
  const here = last.cutting + last.liner + last.potted + last.planted;
  return (
    <figure>
      <figcaption id={describedBy} className="mb-4 max-w-prose">{t('says', { from: sayDay(first.day), until: sayDay(last.day), n: here, incidents: axis.incidents.length })}</figcaption>
      <TimeKey hasIncidents={axis.incidents.length > 0} />
      <TimeChart axis={axis} describedBy={describedBy} />
      {axis.incidents.length > 0 && <div className="mt-6"><IncidentsTable incidents={axis.incidents} /></div>}
      <div className="mt-4 text-sm">
        <More words={t('table')}><TimeTable points={axis.points} /></More>
        <More words={t('worked')}><p className="max-w-prose text-ink-soft">{t('method', { weeks: axis.weeks })}</p></More>
        <a href={csv} className="not-on-paper inline-flex min-h-8 items-center underline">{t('csv')}</a>
      </div>
    </figure>
  );
}
