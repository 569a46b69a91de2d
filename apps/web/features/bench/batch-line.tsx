import type { BatchInList } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { lineField } from '../../lib/line-field.ts';
import { newId } from '../../lib/new-id.ts';
import { Flag } from '../../ui/flag.tsx';
import { HiddenField } from '../../ui/form/hidden-field.tsx';
import { StageMark } from '../../ui/stage-mark.tsx';

/** One batch of many: what it is, in one line, and what is asked of it. */
export function BatchLine({ at, batch, children }: { at: number; batch: BatchInList; children: ReactNode }) {
  const t = useTranslations('bench');
  const name = batch.label ?? `…${batch.id.slice(-6)}`;
  return (
    <fieldset className="card rounded-lg border border-line bg-sheet px-4 py-3 break-inside-avoid lg:grid lg:grid-cols-[1fr_1.4fr] lg:items-center lg:gap-x-6">
      <legend className="sr-only">{name}</legend>
      <p className="mb-3 flex flex-wrap lg:mb-0 items-center gap-x-4 gap-y-1">
        <span className="tie-label text-lg">{name}</span>
        <StageMark stage={batch.stage} />
        <strong className="tabular-nums">{t('here', { n: batch.balance })}</strong>
        {batch.stage === 'cutting' && <span>{batch.rootedNow === null ? t('rootedUnknown') : t('rooted', { n: batch.rootedNow })}</span>}
        <span className="text-sm text-ink-soft">{[batch.donorTree?.label ?? [batch.isMixed ? t('mixed') : undefined, batch.stand?.name, batch.taxon?.name].filter(Boolean).join(', '), batch.place?.name, batch.rows].filter(Boolean).join(', ')}</span>
        {batch.held && <Flag tone="look">{t('held')}</Flag>}
      </p>
      <HiddenField name={lineField(at, 'batchId')} value={batch.id} />
      <HiddenField name={lineField(at, 'entryId')} value={newId()} />
      <HiddenField name={lineField(at, 'toBatchId')} value={newId()} />
      <div>{children}</div>
    </fieldset>
  );
}
