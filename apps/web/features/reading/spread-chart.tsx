import type { FunnelStage } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { useId } from 'react';
import { EDGE, ROW, spreadRows, TICKS, WIDTH } from './spread-geometry.ts';
import { SpreadMarks } from './spread-marks.tsx';

interface SpreadChartProps {
  readonly title: string;
  readonly description: string;
  readonly stages: readonly FunnelStage[];
  readonly nameOf: (stage: FunnelStage['stage']) => string;
}

/** Shares with both their ranges, a line a stage, from none to all. */
export function SpreadChart({ title, description, stages, nameOf }: SpreadChartProps) {
  const [titleId, descriptionId] = [useId(), useId()];
  const rows = spreadRows(stages);
  const foot = rows.length * ROW;
  return (
    <svg viewBox={`0 0 ${WIDTH} ${foot + 22}`} role="img" aria-labelledby={titleId} aria-describedby={descriptionId} className="w-full max-w-md text-ink">
      <title id={titleId}>{title}</title>
      <desc id={descriptionId}>{description}</desc>
      {TICKS.map(({ at, x }) => (
        <g key={at} fontSize="11.5" className="fill-ink-soft tabular-nums">
          <path d={`M${x} 20V${foot}`} className="stroke-line" strokeDasharray="2 3" />
          <text x={x} y={foot + 15} textAnchor={at === 0 ? 'start' : at === 1 ? 'end' : 'middle'}>{at * 100} %</text>
        </g>
      ))}
      {rows.map(({ stage, top, ...marks }) => (
        <g key={stage} transform={`translate(0 ${top})`}>
          <text x={EDGE} y="16" fontSize="13" fontWeight="600" className="fill-ink">{nameOf(stage)}</text>
          <SpreadMarks {...marks} />
        </g>
      ))}
    </svg>
  );
}

/** What its marks mean. */
export function SpreadKey({ hasExtremes }: { hasExtremes: boolean }) {
  const { readings: { stand: { spreadKey: said } } } = useMessages();
  const t = useTranslations('readings.stand.spreadKey');
  const names = ['rate', 'open', 'alone', 'byDonor', ...(hasExtremes ? (['extremes'] as const) : [])] as const;
  const none = { rate: undefined, open: undefined, alone: undefined, byDonor: undefined, extremes: [] };
  const stretch = { from: 2, to: 26 };
  const marks = { rate: { rate: 14 }, open: { open: stretch }, alone: { alone: stretch }, byDonor: { byDonor: stretch }, extremes: { extremes: [8, 20] } };
  return (
    <ul className="flex flex-col gap-2 text-sm" aria-label={said.title}>
      {names.map((name) => (
        <li key={name} className="flex items-center gap-3">
          <svg viewBox="0 22 28 30" width="28" height="30" className="shrink-0" aria-hidden><SpreadMarks {...none} {...marks[name]} /></svg>
          {t(name)}
        </li>
      ))}
    </ul>
  );
}
