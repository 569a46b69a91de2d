import type { FunnelGroup } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { PairedFunnel } from './paired-funnel.tsx';
import { FunnelTable } from './funnel-table.tsx';
import { sumsOf } from './funnel-sums.ts';
import { More } from './more.tsx';
import { WorkedOut } from './worked-out.tsx';

/** A paired funnel with its sentence, its table twin and where it comes from. */
export function FunnelFigure({ name, group, csv, onward }: { name: string; group: FunnelGroup; csv: string; onward?: ReactNode }) {
  const t = useTranslations('readings');
  const sentence = t('sentence', sumsOf(group));
  return (
    <figure>
      <figcaption className="mb-4 max-w-prose">{sentence}</figcaption>
      <PairedFunnel name={name} description={sentence} stages={group.stages} />
      {onward}
      <div className="mt-4 border-t border-line pt-2 text-sm">
        <More words={t('table')}><FunnelTable name={name} stages={group.stages} /></More>
        <WorkedOut what="funnel" />
        <a href={csv} className="not-on-paper inline-flex min-h-8 items-center underline">{t('csv')}</a>
      </div>
    </figure>
  );
}
