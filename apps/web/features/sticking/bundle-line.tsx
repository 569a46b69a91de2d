import type { Trip } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Flag } from '../../ui/flag.tsx';
import { HiddenField } from '../../ui/form/hidden-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { lineField } from '../../lib/line-field.ts';

interface BundleLineProps {
  readonly at: number;
  readonly bundle: Trip['bundles'][number];
  readonly donor: string;
  readonly label: string | undefined;
  readonly ids: { readonly entryId: string; readonly batchId: string };
}

/** One bundle: how many of it went into the tray, into which rows, and under which label. */
export function BundleLine({ at, bundle, donor, label, ids }: BundleLineProps) {
  const { sticking: said, trips } = useMessages();
  const t = useTranslations('sticking');
  const { id, cuttings, stuck, shoot, foliage, base } = bundle;
  const material = [shoot && trips.shoot[shoot], foliage && trips.foliage[foliage], base && trips.base[base]].filter(Boolean).join(', ');
  return (
    <fieldset className="card rounded-lg border border-line bg-sheet p-4 sm:p-5">
      <legend className="sr-only">{donor}</legend>
      <p className="mb-3 flex flex-wrap items-center gap-x-4 gap-y-1">
        <span className="tie-label text-lg">{donor}</span>
        <strong className="tabular-nums">{t('left', { left: Math.max(0, cuttings - stuck), of: cuttings })}</strong>
        <span className="text-sm text-ink-soft">{material}</span>
        {stuck > cuttings && <Flag tone="look">{t('moreThanLeft', { n: stuck - cuttings })}</Flag>}
      </p>
      <HiddenField name={lineField(at, 'bundleId')} value={id} />
      <HiddenField name={lineField(at, 'entryId')} value={ids.entryId} />
      <HiddenField name={lineField(at, 'batchId')} value={ids.batchId} />
      <div className="grid gap-4 sm:grid-cols-3">
        <TextField name={lineField(at, 'n')} keypad="numeric" isOptional />
        <TextField name={lineField(at, 'rows')} isOptional />
        <TextField name={lineField(at, 'label')} isOptional value={label} />
      </div>
      <details className="mt-3">
        <summary className="inline-flex min-h-11 cursor-pointer items-center underline">{said.damagedTitle}</summary>
        <div className="mt-2 grid gap-4 sm:grid-cols-3">
          <TextField name={lineField(at, 'damaged')} keypad="numeric" isOptional />
          <TextField name={lineField(at, 'how')} isOptional hint={said.hints.how} />
          <TextField name={lineField(at, 'strippedAround')} keypad="numeric" isOptional hint={said.hints.strippedAround} />
        </div>
      </details>
    </fieldset>
  );
}
