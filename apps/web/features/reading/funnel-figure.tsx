import type { FunnelGroup } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { StuckBetween } from './as-of.tsx';
import type { DotGrid } from './donor-dots.ts';
import { sumsOf } from './funnel-sentence.ts';
import { FunnelTable } from './funnel-table.tsx';
import { More } from '../../ui/more.tsx';
import { PairedFunnel } from './paired-funnel.tsx';
import { WorkedOut } from './worked-out.tsx';

interface FunnelFigureProps {
  readonly name: string;
  readonly group: FunnelGroup;
  /** Dots of all funnels of the page; not there where donor trees are too many to count. */
  readonly grid: DotGrid | undefined;
  readonly csv: string;
  readonly onward?: ReactNode;
}

/** A paired funnel with its sentence, its table twin and where it comes from. */
export function FunnelFigure({ name, group, grid, csv, onward }: FunnelFigureProps) {
  const t = useTranslations('readings');
  const sentence = useSentence(group);
  return (
    <figure>
      <figcaption className="mb-5 max-w-prose">
        {sentence} <span className="text-ink-soft"><StuckBetween first={group.firstStuckOn} last={group.lastStuckOn} /></span>
      </figcaption>
      <PairedFunnel name={name} description={sentence} stages={group.stages} donors={group.donors.came} grid={grid} />
      {onward}
      <div className="mt-4 border-t border-line pt-2 text-sm">
        <More words={t('table')}><FunnelTable name={name} stages={group.stages} /></More>
        <WorkedOut what="funnel" />
        <a href={csv} className="not-on-paper inline-flex min-h-8 items-center underline">{t('csv')}</a>
      </div>
    </figure>
  );
}

/** The funnel in words, such as "Of 412 cuttings of juniper from 12 donor trees, 203 are with us today. 8 donor trees live on." */
function useSentence(group: FunnelGroup): string {
  const t = useTranslations('readings.sentence');
  const { areCuttings, ...sums } = sumsOf(group);
  const species = group.commonName?.toLowerCase() ?? group.taxon ?? t('trees');
  const lives = sums.donors === 0 ? t('noDonors') : sums.left === sums.donors ? t('allLeft', sums) : t('left', sums);
  const of = { n: sums.n, donors: sums.donors, species };
  return `${areCuttings ? t('cuttings', of) : t('plants', of)}${t('here', sums)}${t('planted', sums)}${lives}`;
}
