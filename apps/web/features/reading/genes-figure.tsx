import type { Diversity } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { useId } from 'react';
import { StageMark } from '../../ui/stage-mark.tsx';
import { GenesTable } from './genes-table.tsx';
import { ShareRibbon } from './share-ribbon.tsx';
import { WorkedOut } from './worked-out.tsx';

/** Donor trees in the plants of one stand and species: a ribbon a stage, then the figures. */
export function GenesFigure({ stand }: { stand: Diversity['stands'][number] }) {
  const t = useTranslations('readings.stand');
  const describedBy = useId();
  const stages = stand.stages.filter(({ plants }) => plants > 0);
  return (
    <figure>
      <figcaption id={describedBy} className="mb-4 max-w-prose text-ink-soft">
        {t('donorTrees', { known: stand.donorTrees, distinct: stand.assumedDistinct })} {stages.length > 0 && t('ribbon')}
      </figcaption>
      {stages.length > 0 && (
        <div role="img" aria-label={t('ribbonTitle', { about: stand.commonName ?? stand.taxon })} aria-describedby={describedBy} className="mb-6 grid max-w-3xl gap-3">
          {stages.map(({ stage, plants, donors, perDonor }) => (
            <div key={stage}>
              <p className="flex flex-wrap items-center justify-between gap-x-4 text-sm">
                <StageMark stage={stage} />
                <span>{t('ribbonOf', { plants, donors })}</span>
              </p>
              <ShareRibbon perDonor={perDonor} />
            </div>
          ))}
        </div>
      )}
      <GenesTable stand={stand} />
      <p className="mt-3 max-w-prose text-ink-soft">{t('captureMore')}</p>
      <div className="mt-3 text-sm"><WorkedOut what="genes" /></div>
    </figure>
  );
}
