import { useTranslations } from 'next-intl';
import { useState } from 'react';
import type { EntryToSend } from '../../lib/entry-to-send.ts';
import { newId } from '../../lib/new-id.ts';
import type { SmallPhoto } from '../../lib/phone/photo-work.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { Caution } from '../../ui/caution.tsx';
import { MARK, PLATE } from '../../ui/form/plate.ts';
import { Keypad, numberAfter } from '../../ui/form/keypad.tsx';
import { useTypedFigures } from '../../ui/form/use-typed-figures.ts';
import { PhotoPicker } from '../../ui/photo-picker.tsx';
import { type Act, asks, entryOf, type Slip, slipIn, type Told, type When } from './act.ts';
import { type BatchHere, labelsHere } from '../../lib/phone/batch-here.ts';
import { BooksLine } from './books-line.tsx';
import { booksOfHere } from './books-of-here.ts';
import { JoinChoice } from './join-choice.tsx';
import { joinable } from './joinable.ts';
import { NumberBox } from './number-box.tsx';
import { PlaceChoice } from './place-choice.tsx';
import { TypedWords } from './typed-words.tsx';
import type { FieldPackNow } from './use-field-pack.ts';
import { momentOf } from './when.ts';

interface ActFormProps {
  readonly act: Act;
  readonly batch: BatchHere;
  readonly found: FieldPackNow;
  readonly when: When;
  /** For the plants, as it was scanned; once it is on some, it is offered no more. */
  readonly label: string | undefined;
  /** @param photos that go with it; of a note without words nothing else is kept */
  readonly keep: (entry: EntryToSend, told: Told, photos: readonly SmallPhoto[]) => Promise<void>;
  readonly back: () => void;
}

/** What is asked of one act, and what the books will make of it before it is kept. */
export function ActForm({ act, batch, found, when, label, keep, back }: ActFormProps) {
  const t = useTranslations('act');
  const [told, setTold] = useState<Told>(() => ({ label: label !== undefined && labelsHere(found.walk, found.entries).has(label.toUpperCase()) ? undefined : label }));
  const [slip, setSlip] = useState<Slip>();
  // Made once: pressed twice, it is kept once.
  const [ids] = useState(() => ({ entryId: newId(), toBatchId: newId() }));
  const standsAt = booksOfHere(batch, found).ahead?.after.stays.at(-1)?.placeId ?? batch.placeId;
  const [photos, setPhotos] = useState<readonly SmallPhoto[]>([]);
  const slipped = slipIn(act, told, standsAt, labelsHere(found.walk, found.entries.filter(({ id }) => id !== ids.entryId)));
  // A photo says something by itself.
  const wrong = slipped === 'text' && photos.length > 0 ? undefined : slipped;
  const entry = entryOf(act, batch.id, told, ids, when, momentOf(when, found.today, found.pack.programme.zone));

  function tell(more: Told): void {
    setSlip(undefined);
    setTold({ ...told, ...more });
  }
  function press(key: string): void {
    if (asks(act, 'n')) tell({ n: numberAfter(told.n, key), all: false });
  }
  useTypedFigures(press);

  return (
    <>
      {asks(act, 'n') && (
        <>
          <div className="flex gap-2">
            <NumberBox words={t(`howMany.${act}`)} n={told.all ? undefined : told.n} isActive={!told.all} activate={() => tell({ all: false })} />
          </div>
          <Keypad name={t('keypad')} press={press} />
        </>
      )}
      {asks(act, 'all') && <Tick words={t('all')} isOn={told.all === true} turn={(all) => tell({ all })} />}
      {asks(act, 'leavesNone') && <Tick words={t('leavesNone')} isOn={told.leavesNone === true} turn={(leavesNone) => tell({ leavesNone })} />}
      <ActWords act={act} batch={batch} told={told} found={found} tell={tell} />
      {act === 'note' && <PhotoPicker photos={photos} change={setPhotos} />}
      {!wrong && act !== 'note' && <BooksLine {...booksOfHere(batch, found, ids.entryId, entry)} entryId={ids.entryId} />}
      {act !== 'note' && <Caution>{t(`cautions.${act}`)}</Caution>}
      {slip && <p role="alert" className="font-semibold text-rust">{t(`slips.${slip}`)}</p>}
      <div className="sticky bottom-0 -mx-4 flex gap-2 border-t border-line bg-paper px-4 py-2">
        <button type="button" onClick={back} className={`${buttonClass('quiet')} narrow-button min-h-16`}>{t('notNow')}</button>
        <button type="button" onClick={() => (wrong ? setSlip(wrong) : void keep(entry, told, photos))} className={`${buttonClass(wrong ? 'quiet' : 'main')} min-h-16 flex-1 text-lg`}>{t('keep')}</button>
      </div>
    </>
  );
}

/** What is chosen or written, besides how many. */
function ActWords({ act, batch, told, found, tell }: { act: Act; batch: BatchHere; told: Told; found: FieldPackNow; tell: (more: Told) => void }) {
  const t = useTranslations('act');
  const { pack, last } = found;
  // A batch of their own is told of; one that they join has all that already.
  const isOwn = told.joinId === undefined && !told.all;
  const isTray = pack.places.find(({ id }) => id === told.placeId)?.kind === 'tray';
  return (
    <>
      {asks(act, 'place') && <PlaceChoice legend={t('where')} places={pack.places} act={act} last={last.placeId} chosen={told.placeId} choose={(placeId) => tell({ placeId, joinId: undefined, rows: undefined })} />}
      {!told.all && <JoinChoice joinable={joinable(act, batch, told.placeId, found)} chosen={told.joinId} choose={(joinId) => tell({ joinId })} />}
      {asks(act, 'rows') && isOwn && isTray && <TypedWords label={t('rows')} isOptional value={told.rows} change={(rows) => tell({ rows })} />}
      {asks(act, 'positions') && <TypedWords label={t('positions')} isOptional value={told.positions} change={(positions) => tell({ positions })} />}
      {asks(act, 'container') && isOwn && <TypedWords label={t('container')} isOptional value={told.container} change={(container) => tell({ container })} last={last.container} />}
      {asks(act, 'medium') && isOwn && <TypedWords label={t('medium')} isOptional value={told.medium} change={(medium) => tell({ medium })} last={last.medium} />}
      {asks(act, 'label') && isOwn && <TypedWords label={t('label')} isOptional value={told.label} change={(label) => tell({ label })} />}
      {asks(act, 'reason') && <TypedWords label={t('reason')} value={told.reason} change={(reason) => tell({ reason })} last={last.reason} />}
      {asks(act, 'text') && <TypedWords label={t('text')} isLong value={told.text} change={(text) => tell({ text })} />}
    </>
  );
}

function Tick({ words, isOn, turn }: { words: string; isOn: boolean; turn: (isOn: boolean) => void }) {
  return (
    <label className={PLATE}>
      <input type="checkbox" checked={isOn} onChange={(event) => turn(event.target.checked)} className={MARK} />
      {words}
    </label>
  );
}
