'use client';

import { useTranslations } from 'next-intl';
import { useState } from 'react';
import { chime } from '../../lib/chime.ts';
import type { EntryToSend } from '../../lib/entry-to-send.ts';
import { fieldAddress } from '../../lib/field-address.ts';
import type { SmallPhoto } from '../../lib/phone/photo-work.ts';
import { rememberUsed } from '../../lib/phone/last-used.ts';
import { theStore } from '../../lib/phone/store.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { Flag } from '../../ui/flag.tsx';
import { KeptBanner } from '../../ui/kept-banner.tsx';
import { useNewHeading } from '../../ui/use-new-heading.ts';
import { type Act, actsFor, type Told, type When } from './act.ts';
import { ActForm } from './act-form.tsx';
import { BatchHead } from './batch-head.tsx';
import { type BatchHere, batchesHere } from '../../lib/phone/batch-here.ts';
import { booksOfHere } from './books-of-here.ts';
import { NotHere } from './not-here.tsx';
import { keepWithPhotos, takeBackWithPhotos } from './note-photos.ts';
import { OwnActs } from './own-acts.tsx';
import { type FieldPackNow, useFieldPack } from './use-field-pack.ts';
import { walkHref } from './walk-href.ts';
import { rememberWhen, whenBefore } from './when.ts';
import { WhenLine } from './when-line.tsx';

interface ActScreenProps {
  readonly programme: string;
  readonly walkId: string;
  readonly batchId: string;
  /** That the plants are to get, such as one that was just scanned. */
  readonly label?: string | undefined;
}

/** Something is done to a batch of a packed walk: potted up, moved, thrown out, written down. */
export function ActScreen({ programme, walkId, batchId, label }: ActScreenProps) {
  const field = useTranslations('field');
  const found = useFieldPack({ programme, walkId });
  if (found === undefined) return <p role="status">{field('opening')}</p>;
  const batch = found === 'unknown' || !found.walk ? undefined : batchesHere(found.walk, found.pack.places, found.entries, found.walks).find(({ id }) => id === batchId);
  if (found === 'unknown' || !batch) return <NotHere backHref={walkHref(programme, found === 'unknown' ? undefined : found.walk)} />;
  return <ActOnBatch key={batchId} programme={programme} found={found} batch={batch} label={label} />;
}

interface Kept {
  readonly entry: EntryToSend;
  readonly photos: readonly SmallPhoto[];
  readonly state: 'busy' | 'kept' | 'undone' | 'failed';
}

function ActOnBatch({ programme, found, batch, label }: { programme: string; found: FieldPackNow; batch: BatchHere; label: string | undefined }) {
  const t = useTranslations('act');
  const [act, choose] = useState<Act>();
  const [kept, setKept] = useState<Kept>();
  const [when, setWhen] = useState<When>(() => whenBefore(found.today, found.pack.workdays));
  const scanHref = fieldAddress(programme, 'scan', ...(found.walk ? [found.walk.id] : []));
  const top = useNewHeading(act);
  const { ahead, isHeld } = booksOfHere(batch, found, kept?.entry.id);

  async function write(entry: EntryToSend, photos: readonly SmallPhoto[], isUndone: boolean): Promise<boolean> {
    setKept({ entry, photos, state: 'busy' });
    try {
      const what = { programme, about: batch.label, reason: t('undoneReason'), entry, photos, takenBy: found.author.personId };
      await (isUndone ? takeBackWithPhotos(what) : keepWithPhotos(what));
      setKept({ entry, photos, state: isUndone ? 'undone' : 'kept' });
      chime(isUndone ? 'undone' : 'kept');
      return true;
    } catch {
      // Full, or switched off: it is still on the screen, and nowhere else.
      setKept({ entry, photos, state: 'failed' });
      return false;
    }
  }

  async function keep(entry: EntryToSend, { placeId, container, medium, reason }: Told, photos: readonly SmallPhoto[]): Promise<void> {
    if (!(await write(entry, photos, false))) return;
    choose(undefined);
    await rememberUsed(await theStore(), programme, { placeId, container, medium, reason }).catch(() => undefined);
  }

  return (
    <>
      <KeptBanner
        state={kept?.state}
        title={t(kept?.state === 'undone' ? 'undone' : 'kept', { label: batch.label })}
        books={ahead && { before: ahead.before.balance, after: ahead.after.balance }}
        undo={kept ? () => void write(kept.entry, kept.photos, true) : undefined}
        next={<a href={scanHref} className={`${buttonClass('quiet')} w-full`}>{t('scanNext')}</a>}
      />
      <section aria-labelledby="batch" className="mx-auto flex max-w-md flex-col gap-3">
        <BatchHead ref={top} batch={batch} balance={ahead?.after.balance} rooted={ahead?.after.rooted.now} doing={act} walkHref={walkHref(programme, found.walk)} scanHref={scanHref} countHref={found.walk && !batch.isNew ? fieldAddress(programme, found.walk.kind === 'places' ? 'round' : 'list', found.walk.id, batch.id) : undefined} />
        {isHeld && <p className="rounded-md border-2 border-rust bg-rust-wash p-3 text-rust"><Flag tone="grave">{t('held')}</Flag> {t('heldLead')}</p>}
        <WhenLine {...found} when={when} change={(next) => { setWhen(next); rememberWhen(found.today, next); }} />
        {act ? (
          <ActForm key={act} act={act} batch={batch} found={found} when={when} label={label} keep={keep} back={() => choose(undefined)} />
        ) : (
          <>
            <div className="grid grid-cols-2 gap-2">
              {actsFor(batch.stage, isHeld).map((one) => (
                <button key={one} type="button" onClick={() => { choose(one); setKept(undefined); }} className={`${buttonClass('quiet')} narrow-button min-h-16 leading-tight`}>{t(`acts.${one}`)}</button>
              ))}
            </div>
            <OwnActs batchId={batch.id} found={found} undo={(entry) => void write(entry, [], true)} />
          </>
        )}
      </section>
    </>
  );
}
