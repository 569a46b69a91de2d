import { useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import type { ChartShape } from './chart-shape.ts';

const HEIGHT = 160;
const at = (share: number): string => `${share * 100}%`;

interface ClimateChartProps {
  readonly what: string;
  readonly from: string;
  readonly until: string;
  readonly shape: ChartShape;
}

/** Strokes from the lowest to the highest reading of a day, a dot at the mean. It grows with the page; letters keep their size. */
export function ClimateChart({ what, from, until, shape: { days, ticks, lowest, highest } }: ClimateChartProps) {
  const t = useTranslations('climate');
  return (
    <figure className="max-w-4xl">
      <figcaption className="font-semibold">{what}</figcaption>
      <div className="mt-3 grid grid-cols-[2.75rem_1fr] text-sm text-ink-soft">
        <span />
        <svg role="img" aria-label={t('chart', { what, from: sayDay(from), until: sayDay(until), lowest, highest })} width="100%" height={HEIGHT} className="overflow-visible">
          {ticks.map(({ value, y }) => (
            <g key={value}>
              <line x1="0" x2="100%" y1={at(y)} y2={at(y)} className="stroke-line" />
              <text x="-8" y={at(y)} textAnchor="end" dominantBaseline="middle" className="fill-ink-soft tabular-nums">{value}</text>
            </g>
          ))}
          {days.map(({ day, x, top, middle, bottom }) => (
            <g key={day}>
              <line x1={at(x)} x2={at(x)} y1={at(top)} y2={at(bottom)} strokeWidth="5" strokeLinecap="round" className="stroke-lichen-deep" />
              <circle cx={at(x)} cy={at(middle)} r="3.5" className="fill-ink" />
            </g>
          ))}
        </svg>
        <span />
        <div className="mt-2 flex justify-between" aria-hidden><span>{sayDay(from)}</span><span>{sayDay(until)}</span></div>
      </div>
    </figure>
  );
}
