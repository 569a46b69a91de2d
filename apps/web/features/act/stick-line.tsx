import type { PackedBundle } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { useState } from 'react';
import { sayDay } from '../../lib/calendar.ts';
import { newId } from '../../lib/new-id.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { Flag } from '../../ui/flag.tsx';
import { Keypad, numberAfter } from '../../ui/form/keypad.tsx';
import { useTypedFigures } from '../../ui/form/use-typed-figures.ts';
import { labelsHere } from '../../lib/phone/batch-here.ts';
import { NarrowChoice } from '../../ui/form/narrow-choice.tsx';
import { narrowed } from '../../ui/form/narrowed.ts';
import { NumberBox } from './number-box.tsx';
import { PlaceChoice } from './place-choice.tsx';
import { bundleChoices, leftOf, type StickNumber, type StickSlip, stickSlip, type StickTold } from './stick.ts';
import { TypedWords } from './typed-words.tsx';
import type { FieldPackNow } from './use-field-pack.ts';

const NUMBERS: readonly StickNumber[] = ['n', 'damaged', 'stripped'];

interface StickLineProps {
  readonly found: FieldPackNow;
  /** As it was scanned. */
  readonly label: string | undefined;
  readonly keep: (told: StickTold, ids: { readonly entryId: string; readonly batchId: string }) => Promise<void>;
}

/** One bundle into one tray. */
export function StickLine({ found, label, keep }: StickLineProps) {
  const t = useTranslations('act');
  const [told, setTold] = useState<StickTold>({ label });
  const [active, activate] = useState<StickNumber>('n');
  const [slip, setSlip] = useState<StickSlip>();
  // Made once: pressed twice, it is kept once.
  const [ids] = useState(() => ({ entryId: newId(), batchId: newId() }));
  const { pack: { bundles = [], places, packedAt }, own, last } = found;
  const left = leftOf(bundles, own.filter(({ id }) => id !== ids.entryId), packedAt);
  const wrong = stickSlip(told, labelsHere(found.walk, found.entries.filter(({ id }) => id !== ids.entryId)));
  const tooMany = (told.n ?? 0) - (left.get(told.bundleId ?? '') ?? Infinity);

  function tell(more: StickTold): void {
    setSlip(undefined);
    setTold({ ...told, ...more });
  }
  const press = (key: string): void => tell({ [active]: numberAfter(told[active], key) });
  useTypedFigures(press);
  const say = ({ taxon, stand, tripDay, cuttings }: PackedBundle, n: number): string => t('stick.bundleOf', { taxon, stand, day: sayDay(tripDay), left: n, of: cuttings });
  const choices = bundleChoices(bundles, left, say);

  return (
    // On a tablet that lies on its side the keys stand beside the choices.
    <div className="grid gap-4 md:grid-cols-2 md:items-start md:gap-6">
      <div className="grid min-w-0 gap-4">
        <NarrowChoice legend={t('stick.bundle')} find={(typed) => narrowed(choices, typed, [], told.bundleId)} chosen={told.bundleId} choose={(bundleId) => tell({ bundleId })} />
        <PlaceChoice legend={t('stick.tray')} places={places} act="stick" last={last.placeId} chosen={told.placeId} choose={(placeId) => tell({ placeId })} />
      </div>
      <div className="flex min-w-0 flex-col gap-4 md:sticky md:top-4">
        <div className="flex gap-2">
          {NUMBERS.map((name) => <NumberBox key={name} words={t(`stick.${name}`)} n={told[name]} isActive={name === active} activate={() => activate(name)} />)}
        </div>
        <Keypad name={t('stick.keypad', { field: t(`stick.${active}`) })} press={press} />
        {tooMany > 0 && <p role="status"><Flag tone="look">{t('stick.more', { n: tooMany })}</Flag></p>}
        {(told.damaged ?? 0) > 0 && <TypedWords label={t('stick.how')} value={told.how} change={(how) => tell({ how })} />}
        <TypedWords label={t('rows')} isOptional value={told.rows} change={(rows) => tell({ rows })} />
        <TypedWords label={t('label')} isOptional value={told.label} change={(label) => tell({ label })} />
        {slip && <p role="alert" className="font-semibold text-rust">{slip === 'label' || slip === 'labelTaken' || slip === 'rows' ? t(`slips.${slip}`) : t(`stick.slips.${slip}`)}</p>}
        <div className="sticky bottom-0 -mx-4 flex border-t border-line bg-paper px-4 py-2 md:mx-0 md:px-0">
          <button type="button" onClick={() => (wrong ? setSlip(wrong) : void keep(told, ids))} className={`${buttonClass(wrong ? 'quiet' : 'main')} min-h-16 flex-1 text-lg`}>{t('keep')}</button>
        </div>
      </div>
    </div>
  );
}
