import type { FunnelStage } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { PairedFunnel } from './paired-funnel.tsx';
import { FunnelTable } from './funnel-table.tsx';
import { WorkedOut } from './worked-out.tsx';

/** A paired funnel with its sentence, its table twin and where it comes from. */
export function FunnelFigure({ name, stages, csv }: { name: string; stages: readonly FunnelStage[]; csv: string }) {
  const t = useTranslations('readings');
  const sentence = t('sentence', sumsOf(stages));
  return (
    <figure>
      <figcaption className="mb-3 max-w-prose">{sentence}</figcaption>
      <PairedFunnel name={name} description={sentence} stages={stages} />
      <p className="mt-1 text-sm text-ink-soft">{t('chart.key')}</p>
      <details className="mt-3">
        <summary className="min-h-8 cursor-pointer font-semibold underline">{t('table')}</summary>
        <div className="mt-2">
          <FunnelTable name={name} stages={stages} />
        </div>
      </details>
      <p className="not-on-paper mt-2">
        <a href={csv} className="inline-flex min-h-8 items-center underline">{t('csv')}</a>
      </p>
      <WorkedOut what="funnel" />
    </figure>
  );
}

/** What the sentence over a funnel says. Plants that came in at a later stage count where they came in. */
export function sumsOf(stages: readonly FunnelStage[]) {
  const reached = stages.reduce((sum, stage, at) => sum + Math.max(0, stage.reached - (stages[at - 1]?.goneOn ?? 0)), 0);
  return {
    reached,
    donors: Math.max(0, ...stages.map(({ donors }) => donors.reached)),
    here: stages.reduce((sum, { here }) => sum + here, 0),
    left: Math.max(0, ...stages.map(({ donors }) => donors.left)),
    planted: stages.at(-1)?.reached ?? 0,
  };
}
