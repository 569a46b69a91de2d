import type { TimeAxis } from '@sprigline/contract';
import { useFormatter, useTranslations } from 'next-intl';
import { monthAndYear } from '../../lib/calendar.ts';
import { type Layer, timeShape } from './time-shape.ts';

/** Told apart by how dark they are, and by a line between them, so that they are in grey too. */
export const LAYER_LOOK: Readonly<Record<Layer, string>> = {
  planted: 'fill-juniper', potted: 'fill-lichen-deep', liner: 'fill-lichen print:fill-[#ddd]', cutting: 'fill-transparent',
};

export const INCIDENT_LOOK = 'fill-rust/20 stroke-rust';

/** Drawn in lanes that take what room there is; numbers and dates are text of the page's own size. */
export function TimeChart({ axis, describedBy }: { axis: TimeAxis; describedBy: string }) {
  const t = useTranslations('dashboards.time');
  const { number } = useFormatter();
  const { layers, days, heights, looks, incidents } = timeShape(axis);
  return (
    <div role="img" aria-label={t('title')} aria-describedby={describedBy} className="grid max-w-4xl grid-cols-[auto_1fr] gap-x-2">
      <svg className="block h-56 w-14 overflow-visible text-sm tabular-nums sm:h-72">
        {heights.map(({ at, plants }) => <text key={plants} x="100%" y={`${at}%`} dy="0.35em" textAnchor="end" className="fill-ink-soft">{number(plants)}</text>)}
      </svg>
      <svg className="block h-56 w-full overflow-visible sm:h-72" viewBox="0 0 100 100" preserveAspectRatio="none">
        {heights.map(({ at, plants }) => <line key={plants} x1="0" x2="100" y1={at} y2={at} strokeWidth="1" vectorEffect="non-scaling-stroke" className="stroke-line" />)}
        {layers.map(({ layer, path }) => <path key={layer} d={path} strokeWidth="1.25" vectorEffect="non-scaling-stroke" className={`stroke-line-strong ${LAYER_LOOK[layer]}`} />)}
        {incidents.map(({ entryId, from, width }) => (
          <rect key={entryId} x={from} y="0" width={width} height="100" strokeWidth="1.5" strokeDasharray="5 3" vectorEffect="non-scaling-stroke" className={INCIDENT_LOOK} />
        ))}
      </svg>
      <span className="mt-2 w-14 text-right text-sm text-ink-soft">{t('looks')}</span>
      <svg className="mt-3 block h-6 w-full overflow-visible" viewBox="0 0 100 100" preserveAspectRatio="none">
        {looks.map(({ day, at, height }) => <line key={day} x1={at} x2={at} y1={100 - Math.max(20, height)} y2="100" strokeWidth="2" vectorEffect="non-scaling-stroke" className="stroke-line-strong" />)}
        <line x1="0" x2="100" y1="100" y2="100" strokeWidth="1" vectorEffect="non-scaling-stroke" className="stroke-line-strong" />
      </svg>
      <span />
      <svg className="block h-8 w-full overflow-visible text-sm">
        {days.map(({ at, year, month }, index) => <text key={at} x={`${at}%`} y="1.3em" textAnchor={anchorAt(at)} className={`fill-ink-soft ${index % 2 === 0 ? '' : 'max-sm:hidden'}`}>{monthAndYear(year, month)}</text>)}
      </svg>
    </div>
  );
}

/** Words near an end grow inwards. */
const anchorAt = (at: number): 'start' | 'middle' | 'end' => (at < 10 ? 'start' : at > 90 ? 'end' : 'middle');
