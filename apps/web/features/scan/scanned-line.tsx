import { useMessages, useTranslations } from 'next-intl';
import { lineField } from '../../lib/line-field.ts';
import { Flag } from '../../ui/flag.tsx';
import { useField } from '../../ui/form/form-context.ts';
import { TextField } from '../../ui/form/text-field.tsx';
import { StageMark } from '../../ui/stage-mark.tsx';
import type { ScannedBatch } from './scanned.ts';

interface ScannedLineProps {
  readonly batch: ScannedBatch;
  /** At a site it is asked how many; a single plant is one. */
  readonly isPlanting: boolean;
  readonly takeOff: () => void;
}

/** One scanned batch, what was wrong with it when it was sent, and the way off the list. */
export function ScannedLine({ batch: { at, batchId, label, stage, what, place, balance, isHeld, entryId, toBatchId }, isPlanting, takeOff }: ScannedLineProps) {
  const { moving: said } = useMessages().scan;
  const t = useTranslations('scan.moving');
  const field = lineField(at, 'n');
  const isAsked = isPlanting && stage !== 'planted' && balance > 1;
  const { error } = useField(field);
  return (
    <div id={isAsked ? undefined : field} tabIndex={-1} className={`rounded-md border bg-sheet px-3 py-2 ${error ? 'border-l-4 border-rust' : 'border-line'}`}>
      <div className="flex flex-wrap items-center gap-x-4 gap-y-1">
        <span className="tie-label text-lg">{label}</span>
        <StageMark stage={stage} />
        <span className="tabular-nums">{t('plants', { n: balance })}</span>
        {isHeld && <Flag tone="grave">{said.held}</Flag>}
        <button type="button" onClick={takeOff} aria-label={t('takeOffThis', { label })} className="ml-auto inline-flex min-h-14 min-w-14 cursor-pointer items-center justify-center px-2 underline">{said.takeOff}</button>
      </div>
      <p className="text-sm text-ink-soft">{[what, place].filter(Boolean).join(' · ')}</p>
      {!isAsked && error && <p className="font-semibold text-rust">{error}</p>}
      {[['batchId', batchId], ['entryId', entryId], ['toBatchId', toBatchId], ['stage', stage]].map(([name = '', value]) => <input key={name} type="hidden" name={lineField(at, name)} value={value} />)}
      {isAsked ? <TextField name={field} keypad="numeric" hint={t('ofSoMany', { n: balance })} /> : isPlanting && <input type="hidden" name={field} value="1" />}
    </div>
  );
}
