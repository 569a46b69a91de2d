'use client';

import { useTranslations } from 'next-intl';
import { useState } from 'react';
import { chime } from '../../lib/chime.ts';
import type { EntryToSend } from '../../lib/entry-to-send.ts';
import { newId } from '../../lib/new-id.ts';
import type { SmallPhoto } from '../../lib/phone/photo-work.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { KeptBanner } from '../../ui/kept-banner.tsx';
import { PageHeading } from '../../ui/page-heading.tsx';
import { PhotoPicker } from '../../ui/photo-picker.tsx';
import { entryAt, type When } from './act.ts';
import { NotHere } from './not-here.tsx';
import { keepWithPhotos, takeBackWithPhotos } from './note-photos.ts';
import { PlaceChoice } from './place-choice.tsx';
import { TypedWords } from './typed-words.tsx';
import { type FieldPackNow, useFieldPack } from './use-field-pack.ts';
import { walkHref } from './walk-href.ts';
import { momentOf, rememberWhen, whenBefore } from './when.ts';
import { WhenLine } from './when-line.tsx';

/** A note on a place, first of all on the one that is walked. */
export function PlaceNote({ programme, walkId }: { programme: string; walkId: string }) {
  const field = useTranslations('field');
  const found = useFieldPack({ programme, walkId });
  if (found === undefined) return <p role="status">{field('opening')}</p>;
  return found === 'unknown' ? <NotHere backHref={walkHref(programme, undefined)} /> : <NoteForm programme={programme} found={found} />;
}

type State = 'busy' | 'kept' | 'undone' | 'failed';

function NoteForm({ programme, found }: { programme: string; found: FieldPackNow }) {
  const t = useTranslations('act');
  const [when, setWhen] = useState<When>(() => whenBefore(found.today, found.pack.workdays));
  const [about, setAbout] = useState(() => (found.walk?.kind === 'places' ? found.walk.id : found.walk?.round.stops[0]?.place.id) ?? '');
  const [text, setText] = useState('');
  const [id, setId] = useState(newId);
  const [kept, setKept] = useState<{ readonly entry: EntryToSend; readonly label: string; readonly photos: readonly SmallPhoto[]; readonly state: State }>();
  const [photos, setPhotos] = useState<readonly SmallPhoto[]>([]);
  const [isBlank, setBlank] = useState(false);
  const label = found.pack.places.find((place) => place.id === about)?.name ?? '';

  async function write(entry: EntryToSend, of: string, taken: readonly SmallPhoto[], isUndone: boolean): Promise<void> {
    setKept({ entry, label: of, photos: taken, state: 'busy' });
    try {
      const what = { programme, about: of, reason: t('undoneReason'), entry, photos: taken, takenBy: found.author.personId };
      await (isUndone ? takeBackWithPhotos(what) : keepWithPhotos(what));
      setKept({ entry, label: of, photos: taken, state: isUndone ? 'undone' : 'kept' });
      chime(isUndone ? 'undone' : 'kept');
      if (isUndone) return;
      setText('');
      setPhotos([]);
      setId(newId());
    } catch {
      setKept({ entry, label: of, photos: taken, state: 'failed' });
    }
  }

  function keep(): void {
    const says = text.trim() !== '' || photos.length > 0;
    setBlank(!says);
    if (says) void write(entryAt(id, when, momentOf(when, found.today, found.pack.programme.zone), { kind: 'noted', placeId: about, text: text.trim() }), label, photos, false);
  }

  return (
    <>
      <p><a href={walkHref(programme, found.walk)} className="inline-flex min-h-14 items-center underline">{t('back')}</a></p>
      <KeptBanner state={kept?.state} title={t(kept?.state === 'undone' ? 'undone' : 'kept', { label: kept?.label ?? '' })} undo={kept ? () => void write(kept.entry, kept.label, kept.photos, true) : undefined} />
      <PageHeading>{t('placeNote.title', { place: label })}</PageHeading>
      <div className="grid max-w-md gap-3">
        <WhenLine {...found} when={when} change={(next) => { setWhen(next); rememberWhen(found.today, next); }} />
        <TypedWords label={t('text')} isLong value={text} change={(next) => { setText(next); setBlank(false); }} />
        {isBlank && <p role="alert" className="font-semibold text-rust">{t('slips.text')}</p>}
        <PhotoPicker photos={photos} change={setPhotos} />
        <PlaceChoice legend={t('placeNote.where')} places={found.pack.places} act="any" last={found.last.placeId} chosen={about} choose={setAbout} />
        <div className="sticky bottom-0 -mx-4 flex gap-2 border-t border-line bg-paper px-4 py-2">
          <button type="button" onClick={keep} className={`${buttonClass('main')} min-h-16 flex-1 text-lg`}>{t('keep')}</button>
        </div>
      </div>
    </>
  );
}
