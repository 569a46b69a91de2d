import type { FunnelStage } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { useId } from 'react';
import { StageShape } from '../../ui/stage-mark.tsx';
import type { DotGrid } from './donor-dots.ts';
import { DonorLane } from './donor-lane.tsx';
import { type FunnelRow, funnelRows } from './funnel-shape.ts';
import { PlantJoint, PlantLane } from './plant-lane.tsx';

interface PairedFunnelProps {
  readonly name: string;
  /** The funnel in a sentence: its alternative for those who do not see it. */
  readonly description: string;
  readonly stages: readonly FunnelStage[];
  /** Donor trees of the whole funnel. */
  readonly donors: number;
  /** One grid for all funnels of a page, so that a dot is as large in each. Not there: too many to count. */
  readonly grid: DotGrid | undefined;
}

/**
 * Plants to the left, donor trees to the right, stage by stage: many plants may be few trees.
 *
 * Bars and dots are drawn in lanes that take what room there is; numbers and words are
 * text of the page's own size, on a phone as on paper.
 */
export function PairedFunnel({ name, description, stages, donors, grid }: PairedFunnelProps) {
  const t = useTranslations('readings.chart');
  const describedBy = useId();
  const rows = funnelRows(stages);
  return (
    <div role="img" aria-label={t('title', { name })} aria-describedby={describedBy} className="max-w-3xl">
      <p id={describedBy} hidden>
        {description}
      </p>
      <div className="mb-1.5 flex gap-6 text-sm font-semibold">
        <span className="flex-1 text-right">{t('plants')}</span>
        <span className="flex-1">{t('donors')}</span>
      </div>
      {stages.map((stage, at) => {
        const row = rows[at];
        return row && <StageRow key={stage.stage} stage={stage} row={row} donors={donors} grid={grid} next={rows[at + 1]} />;
      })}
    </div>
  );
}

interface StageRowProps {
  readonly stage: FunnelStage;
  readonly row: FunnelRow;
  readonly next: FunnelRow | undefined;
  readonly donors: number;
  readonly grid: DotGrid | undefined;
}

function StageRow({ stage, row, next, donors, grid }: StageRowProps) {
  const t = useTranslations('readings.chart');
  const word = useTranslations('words.stage')(stage.stage);
  return (
    <div className="relative">
      {/* From this bar down to the next one, behind the words. */}
      {next && <PlantJoint joint={next.joint} />}
      <p className="relative mx-auto flex w-fit items-center gap-1 rounded-full border border-line bg-sheet py-0.5 pr-3 pl-1.5 text-sm">
        <StageShape stage={stage.stage} /> {word}
      </p>
      <div className="relative mt-1 grid grid-cols-2 gap-x-2">
        <PlantLane row={row} />
        <DonorLane all={donors} stage={stage.donors} grid={grid} />
        <Count many={t('number', { n: stage.reached })} rest={stage.reached > 0 ? t('here', { n: stage.here }) : ''} side="left" />
        <Count many={t('number', { n: stage.donors.reached })} rest={stage.donors.reached > 0 ? t('left', { n: stage.donors.left }) : ''} side="right" />
      </div>
    </div>
  );
}

/** How many came so far, and beside it, how many of them there still are. */
function Count({ many, rest, side }: { many: string; rest: string; side: 'left' | 'right' }) {
  return (
    <p className={`mt-0.5 mb-2 flex flex-wrap items-baseline gap-x-2 leading-tight tabular-nums ${side === 'left' ? 'flex-row-reverse' : ''}`}>
      <strong className="rounded bg-sheet px-1 text-lg leading-tight">{many}</strong>
      {rest && <span className="rounded bg-sheet px-1 text-sm whitespace-nowrap text-ink-soft">{rest}</span>}
    </p>
  );
}
