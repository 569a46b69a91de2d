import type { Trace } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { MARK, PLATE } from '../../ui/form/plate.ts';

/** Most batches that one entry can name. */
export const MOST_HELD = 2_000;

interface Holdable {
  readonly id: string;
  readonly label: string | null;
  readonly stage: 'cutting' | 'liner' | 'potted' | 'planted';
  readonly n: number;
  readonly path: readonly string[];
}

/** Batches of the line that have plants and are not held yet. */
export const toHold = (trace: Trace): Holdable[] => trace.batches.filter(({ n, held }) => n > 0 && !held);

/** The same of what stood beside it; a batch that stood beside it at several places is there once. */
export const besideToHold = (trace: Trace): Holdable[] =>
  [...new Map(trace.beside.filter(({ n, held }) => n > 0 && !held).map((batch) => [batch.id, { ...batch, path: batch.nowPath }])).values()];

/** Ticks for what is to be held: the line ticked beforehand, its neighbours not. */
export function HoldChoices({ trace }: { trace: Trace }) {
  const { trace: { holdPage: said } } = useMessages();
  const beside = besideToHold(trace);
  return (
    <>
      <Ticks heading={said.line} batches={toHold(trace)} isTicked />
      {beside.length > 0 && <Ticks heading={said.beside} batches={beside} isTicked={false} />}
    </>
  );
}

function Ticks({ heading, batches, isTicked }: { heading: string; batches: readonly Holdable[]; isTicked: boolean }) {
  const { trace: { noLabel }, words: { stage: stages } } = useMessages();
  const t = useTranslations('trace.holdPage');
  return (
    <fieldset className="w-full max-w-prose">
      <legend className="mb-2 font-semibold">{heading}</legend>
      <div className="grid gap-2">
        {batches.map(({ id, label, stage, n, path }) => (
          <label key={id} className={PLATE}>
            <input type="checkbox" name={`hold/${id}`} defaultChecked={isTicked} className={MARK} />
            <span>{t('row', { label: label ?? noLabel, stage: stages[stage], n, place: path.join(' › ') })}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
