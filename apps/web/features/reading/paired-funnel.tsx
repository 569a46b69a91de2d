import type { FunnelStage } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { useId } from 'react';
import { StageShape } from '../../ui/stage-mark.tsx';
import { DonorThreads } from './donor-threads.tsx';
import { BAR, type Bar, drawFunnel, type FunnelRow, HEAD, LANE, MIDDLE, ROW, WIDTH } from './funnel-geometry.ts';

const LEFT_EDGE = MIDDLE - LANE;

/** Plants to the left, donor trees to the right, stage by stage: many plants may be few trees. */
export function PairedFunnel({ name, description, stages }: { name: string; description: string; stages: readonly FunnelStage[] }) {
  const t = useTranslations('readings.chart');
  const [titleId, descriptionId] = [useId(), useId()];
  const drawing = drawFunnel(stages);
  return (
    <svg viewBox={`0 0 ${WIDTH} ${HEAD + ROW * stages.length - 10}`} role="img" aria-labelledby={titleId} aria-describedby={descriptionId} className="w-full max-w-md text-ink">
      <title id={titleId}>{t('title', { name })}</title>
      <desc id={descriptionId}>{description}</desc>
      <g className="fill-ink-soft" fontSize="12.5">
        <text x={MIDDLE - 12} y="14" textAnchor="end">{t('plants')}</text>
        <text x={MIDDLE + 12} y="14">{t('donors')}</text>
      </g>
      {drawing.streams.map((path) => <path key={path} d={path} className="fill-lichen print:fill-lichen-deep" />)}
      <DonorThreads {...drawing} />
      {drawing.rows.map((row, at) => {
        const stage = stages[at];
        return stage && <StageRow key={row.stage} row={row} stage={stage} />;
      })}
    </svg>
  );
}

function StageRow({ row: { top, bar }, stage }: { row: FunnelRow; stage: FunnelStage }) {
  const stageWords = useTranslations('words.stage');
  const t = useTranslations('readings.chart');
  return (
    <g className="fill-ink tabular-nums">
      <PlantBar top={top} bar={bar} />
      {stage.here > 0 && <text x={LEFT_EDGE - 3} y={top + BAR + 14} textAnchor="end" fontSize="11.5">{t('here', { n: stage.here })}</text>}
      <g transform={`translate(${MIDDLE - 12} ${top - 1})`}>
        <StageShape stage={stage.stage} />
      </g>
      <g fontSize="15" fontWeight="650">
        <text x={MIDDLE - 17} y={top + 17} textAnchor="end">{stage.reached}</text>
        <text x={MIDDLE + 17} y={top + 17}>{stage.donors.reached}</text>
      </g>
      <text x={MIDDLE} y={top + 39} textAnchor="middle" fontSize="12" className="fill-ink-soft">{stageWords(stage.stage)}</text>
    </g>
  );
}

/** From the lane outward: went on, here now, away. Told apart by how dark they are, so in grey and on paper too. */
function PlantBar({ top, bar: { goneOn, here, away } }: { top: number; bar: Bar }) {
  const parts = [
    { width: goneOn, end: goneOn, look: 'fill-lichen stroke-lichen-deep print:fill-lichen-deep' },
    { width: here, end: goneOn + here, look: 'fill-juniper stroke-juniper' },
    { width: away, end: goneOn + here + away, look: 'fill-sheet stroke-lichen-deep' },
  ];
  return parts.filter(({ width }) => width > 0).map(({ width, end, look }) => (
    <rect key={look} x={LEFT_EDGE - end} y={top} width={width} height={BAR} strokeWidth="1" className={look} />
  ));
}
