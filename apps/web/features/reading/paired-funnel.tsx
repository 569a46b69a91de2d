import type { FunnelStage } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { useId } from 'react';
import { StageShape } from '../../ui/stage-mark.tsx';
import { DOT, type FunnelRow, funnelRows, HEAD, ROW, WIDTH } from './funnel-geometry.ts';

const BAR_HEIGHT = 20;

/** Plants to the left, donor trees to the right, stage by stage: many plants may be few trees. */
export function PairedFunnel({ name, description, stages }: { name: string; description: string; stages: readonly FunnelStage[] }) {
  const t = useTranslations('readings.chart');
  const [titleId, descriptionId] = [useId(), useId()];
  return (
    <svg viewBox={`0 0 ${WIDTH} ${HEAD + ROW * stages.length}`} role="img" aria-labelledby={titleId} aria-describedby={descriptionId} className="w-full max-w-xl text-ink">
      <title id={titleId}>{t('title', { name })}</title>
      <desc id={descriptionId}>{description}</desc>
      <g className="fill-ink-soft" fontSize="12.5">
        <text x={WIDTH / 2 - 44} y="14" textAnchor="end">{t('plants')}</text>
        <text x={WIDTH / 2 + 44} y="14">{t('donors')}</text>
      </g>
      {funnelRows(stages).map((row, at) => {
        const stage = stages[at];
        return stage && <StageRow key={row.stage} row={row} stage={stage} />;
      })}
    </svg>
  );
}

function StageRow({ row, stage }: { row: FunnelRow; stage: FunnelStage }) {
  const stageWords = useTranslations('words.stage');
  const { top, bar } = row;
  return (
    <g fontSize="14" className="fill-ink tabular-nums">
      <rect x={bar.x - bar.reached} y={top} width={bar.reached} height={BAR_HEIGHT} className="fill-lichen stroke-lichen-deep" />
      <rect x={bar.x - bar.here} y={top} width={bar.here} height={BAR_HEIGHT} className="fill-juniper" />
      <text x={bar.x - bar.reached - 6} y={top + 15} textAnchor="end" fontWeight="600">{stage.reached}</text>
      <g transform={`translate(${WIDTH / 2 - 12} ${top - 2})`}>
        <StageShape stage={stage.stage} />
      </g>
      <text x={WIDTH / 2} y={top + 40} textAnchor="middle" fontSize="12.5" className="fill-ink-soft">{stageWords(stage.stage)}</text>
      <Donors row={row} stage={stage} />
    </g>
  );
}

function Donors({ row: { top, dots, donorBar }, stage: { donors } }: { row: FunnelRow; stage: FunnelStage }) {
  const t = useTranslations('readings.chart');
  return (
    <>
      {dots.map(({ x, y, isLeft }) => (
        <circle key={`${x} ${y}`} cx={x} cy={y} r={DOT} strokeWidth="1.4" className={isLeft ? 'fill-juniper stroke-juniper' : 'fill-lichen stroke-lichen-deep'} />
      ))}
      {donorBar && (
        <>
          <rect x={donorBar.x} y={top} width={donorBar.reached} height={BAR_HEIGHT} className="fill-lichen stroke-lichen-deep" />
          <rect x={donorBar.x} y={top} width={donorBar.left} height={BAR_HEIGHT} className="fill-juniper" />
        </>
      )}
      <text x={WIDTH - 2} y={top + 15} textAnchor="end" fontWeight="600">{t('of', donors)}</text>
    </>
  );
}
