import type { Batch } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { Species } from '../../ui/species.tsx';
import { StageMark } from '../../ui/stage-mark.tsx';

/** Which plants a form is about, in one line, so that nobody writes on the wrong label. No numbers: they would be copied. */
export function WhatItIs({ batch: { stage, donorTree, taxon, stand, place, rows } }: { batch: Batch }) {
  const t = useTranslations('batches');
  return (
    <p className="flex flex-wrap items-center gap-x-4 gap-y-1">
      <StageMark stage={stage} />
      {donorTree && <span>{donorTree.label}</span>}
      {taxon && <Species name={taxon.name} />}
      {stand && <span>{stand.name}</span>}
      {place && <strong>{[place.name, rows && t('rows', { rows })].filter(Boolean).join(', ')}</strong>}
    </p>
  );
}
